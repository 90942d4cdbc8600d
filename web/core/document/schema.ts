import type { Hair } from "../../../geometry/hair/hair"
import type { HeadSize } from "../../../geometry/scalp/headSize"
import type { CarrierKind, FoilLie, Section, SectionKind } from "../../../geometry/section/section"
import { consultationSchema } from "./consultationSchema"
import { choice, day, group, id, line, lines, list, mixLetter, number, point, wholeNumber } from "./fields"
import { hairlineSchema, whorlSchema, wornPartingSchema } from "./hairlineSchema"
import { counts, leastStrandShare, letters, limits } from "./limits"
import { planKind, planVersion } from "./planKind"
import { salonSchema } from "./salonSchema"
import { alarmSchema, serviceSchema, timingSchema } from "./timingSchema"
import { toningSchema } from "./toningSchema"
import { workingSectionsSchema } from "./workingSectionsSchema"
import { z } from "./zod"

/** The plan as it is written to a file, version 1. The file door is the only place that checks against it. */

const band = {
  id,
  parting: list(point, counts.partingPoints, "points"),
  taken: choice(["front", "behind"]),
  depthMm: group({ start: number(limits.depthMm), end: number(limits.depthMm) }),
  mayCross: z.optional(z.literal(true, { error: "expected true, or the field left out" })),
  note: lines(letters.note),
  /** The id of its mirror image, which names it back: the two are changed together. */
  twin: z.optional(id),
}

const strand = group({ from: number(limits.strandShare), to: number(limits.strandShare) }).check(
  z.refine(({ from, to }) => to - from >= leastStrandShare - 1e-9, {
    path: ["from"],
    error: `expected less than "to"; the root is 0, the ends are 1`,
  }),
)

const carriers = ["foil", "board", "open-air"] as const satisfies readonly CarrierKind[]
const lies = ["down", "up", "toward-face", "away-from-face"] as const satisfies readonly FoilLie[]

export const treatment = {
  mapNumber: wholeNumber(limits.mapNumber),
  name: z.optional(line(letters.name)),
  rootDistanceMm: number(limits.rootDistanceMm),
  strand,
  faces: z.literal([1, 2], { error: "expected 1 or 2" }),
  carrier: group({
    kind: choice(carriers),
    widthMm: number(limits.carrierWidthMm),
    lengthMm: number(limits.carrierLengthMm),
  }),
  elevationDeg: number(limits.elevationDeg),
  overDirectionDeg: number(limits.overDirectionDeg),
  foilLie: choice(lies),
  mix: mixLetter,
}

export const stitching = {
  stitchMm: number(limits.stitchMm),
  gapMm: number(limits.stitchMm),
  dipMm: number(limits.stitchMm),
}

export const backcombing = {
  base: choice(["slice", "weave"]),
  pushedShare: number(limits.pushedShare),
  cushionMm: number(limits.cushionMm),
}

/** One schema a kind: a kind without its schema does not compile. */
const sections = {
  slice: group({ kind: z.literal("slice"), ...band, ...treatment }),
  weave: group({ kind: z.literal("weave"), ...band, ...treatment, ...stitching }),
  backcomb: group({ kind: z.literal("backcomb"), ...band, ...treatment, ...stitching, ...backcombing }),
  "left-out": group({ kind: z.literal("left-out"), ...band, name: line(letters.name) }),
} satisfies { [K in SectionKind]: z.ZodMiniType<Section<K>> }

export const sectionSchema = z.discriminatedUnion(
  "kind",
  [sections.slice, sections.weave, sections.backcomb, sections["left-out"]],
  { error: `expected a section of kind "slice", "weave", "backcomb" or "left-out"` },
) satisfies z.ZodMiniType<Section>

const caliper = group({
  kind: z.literal("caliper"),
  lengthMm: number(limits.lengthMm),
  breadthMm: number(limits.breadthMm),
  heightMm: number(limits.heightMm),
})
const tape = group({
  kind: z.literal("tape"),
  aroundMm: number(limits.aroundMm),
  overMm: number(limits.overMm),
  frontToNapeMm: number(limits.frontToNapeMm),
})

const sizeSchema = z.discriminatedUnion("kind", [caliper, tape], {
  error: `expected a head size of kind "caliper" or "tape"`,
}) satisfies z.ZodMiniType<HeadSize>

const headSchema = group({
  size: sizeSchema,
  hairline: hairlineSchema,
  /** The parting she wears; not known when left out. */
  wornParting: z.optional(wornPartingSchema),
  /** Where the hair of the crown turns. */
  whorl: z.optional(whorlSchema),
})

const hairSchema = group({
  densityPerCm2: number(limits.densityPerCm2),
  fibreUm: number(limits.fibreUm),
  lengthCm: group({
    front: number(limits.hairLengthCm),
    sides: number(limits.hairLengthCm),
    back: number(limits.hairLengthCm),
  }),
}) satisfies z.ZodMiniType<Hair>

const mixSchema = group({
  id: mixLetter,
  product: line(letters.name),
  developerVolume: number(limits.developerVolume),
  ratio: group({ lightener: number(limits.ratioPart), developer: number(limits.ratioPart) }),
  /** What of its sheet's additives is stirred in, by name. */
  additives: z.optional(list(line(letters.name), counts.additives, "additives")),
})

export const planSchema = group({
  kind: z.literal(planKind),
  version: z.literal(planVersion),
  id,
  name: line(letters.name),
  date: day,
  client: group({ initials: line(letters.initials) }),
  head: headSchema,
  hair: hairSchema,
  mixes: list(mixSchema, counts.mixes, "mixes"),
  sections: list(sectionSchema, counts.sections, "sections"),
  consultation: z.optional(consultationSchema),
  /** What is toned with after rinsing. */
  toning: z.optional(toningSchema),
  /** How the visit is to be timed; a plan without it is timed in the usual way. */
  timing: z.optional(timingSchema),
  /** Sheets, bottles, prices and learnt figures of the salon that rule the plan. */
  salon: z.optional(salonSchema),
  /** What happened at the chair the last time. */
  service: z.optional(serviceSchema),
  /** What happened at the services before that one. */
  earlier: z.optional(list(serviceSchema, counts.services, "services")),
  /** Foils kept for another day, as they were drawn. */
  later: z.optional(list(sectionSchema, counts.sections, "sections")),
  /** What the red button was touched for while no service was going on. */
  alarms: z.optional(list(alarmSchema, counts.taps, "alarms")),
  /** Partings without hair taken that divide the head, and what lies between them. */
  workingSections: z.optional(workingSectionsSchema),
  note: lines(letters.note),
})

export type Plan = Readonly<z.infer<typeof planSchema>>
export type Mix = Plan["mixes"][number]

/** A change of the plan: a pure function to the plan after it, or the reason why it cannot be. */
export type Edit = (plan: Plan) => Plan | Refusal
export type Refusal = { refused: string }

/** The published schema, for those who write plans with other tools. */
export const planJsonSchema = () =>
  z.toJSONSchema(planSchema, {
    // In JSON Schema read-only means "changed by the server alone"; here it only says that lists do not change in place.
    override: ({ jsonSchema }) => {
      delete jsonSchema.readOnly
    },
  })
