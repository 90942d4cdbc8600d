import { edgeShapes } from "../../../geometry/painted/painting"
import type {
  CarrierKind,
  FoilKind,
  FoilLie,
  KindValues,
  Section,
  SectionKind,
} from "../../../geometry/section/section"
import { expected } from "../fields/expected"
import { choice, group, id, line, lines, list, mixLetter, number, point, wholeNumber } from "../fields/fields"
import { counts, leastStrandShare, letters, limits } from "../fields/limits"
import { z } from "../fields/zod"
import { traitsOf } from "./kindRecords"

/** A section as it is written to a file: the fields that kinds share, then one schema a kind. */

const band = {
  id,
  parting: list(point, counts.partingPoints, "points"),
  taken: choice(["front", "behind"]),
  depthMm: group({ start: number(limits.depthMm), end: number(limits.depthMm) }),
  mayCross: z.optional(z.literal(true, { error: expected({ code: "true-or-left-out" }) })),
  note: lines(letters.note),
  /** The id of its mirror image, which names it back: the two are changed together. */
  twin: z.optional(id),
}

const strand = group({ from: number(limits.strandShare), to: number(limits.strandShare) }).check(
  z.refine(({ from, to }) => to - from >= leastStrandShare - 1e-9, {
    path: ["from"],
    error: expected({ code: "less-than-to" }),
  }),
)

const carriers = ["foil", "board", "open-air", "film"] as const satisfies readonly CarrierKind[]
const lies = ["down", "up", "toward-face", "away-from-face"] as const satisfies readonly FoilLie[]

const treatmentIn = (kinds: readonly CarrierKind[]) => ({
  mapNumber: wholeNumber(limits.mapNumber),
  name: z.optional(line(letters.name)),
  rootDistanceMm: number(limits.rootDistanceMm),
  strand,
  faces: z.literal([1, 2], { error: expected({ code: "one-or-two" }) }),
  carrier: group({
    kind: choice(kinds),
    widthMm: number(limits.carrierWidthMm),
    lengthMm: number(limits.carrierLengthMm),
  }),
  elevationDeg: number(limits.elevationDeg),
  overDirectionDeg: number(limits.overDirectionDeg),
  foilLie: choice(lies),
  mix: mixLetter,
})
/** Held and coated in any way at all: of a technique no more is asked. */
export const treatment = treatmentIn(carriers)
const treatmentOf = (kind: FoilKind) => treatmentIn(traitsOf({ kind }).carriers)

/** The hair of a cushion is pushed to the root, and a painted panel fades in from its own edge: neither has roots to coat apart. */
export const roots = z.optional(
  group({
    mix: mixLetter,
    toMm: number(limits.rootDistanceMm),
    first: choice(["ends", "roots"]),
    afterMin: z.optional(number(limits.rootsAfterMin)),
  }),
)

const stitching = {
  stitchMm: number(limits.stitchMm),
  gapMm: number(limits.stitchMm),
  dipMm: number(limits.stitchMm),
}

const backcombing = {
  base: choice(["slice", "weave"]),
  pushedShare: number(limits.pushedShare),
  cushionMm: number(limits.cushionMm),
}

const painting = {
  edge: choice(edgeShapes),
  dropShare: number(limits.strandShare),
  drawn: list(number(limits.strandShare), counts.drawnSteps, "points"),
  featherMm: number(limits.featherMm),
  saturation: group({
    soft: number(limits.saturation),
    middle: number(limits.saturation),
    full: number(limits.saturation),
  }),
}

/** What some kinds have beside their band and treatment, each group whole or not at all. */
export const kindValues = {
  stitching: z.optional(group(stitching)),
  backcombing: z.optional(group(backcombing)),
  painting: z.optional(group(painting)),
} satisfies { [Group in keyof KindValues]: z.ZodMiniType<KindValues[Group] | undefined> }

/** One schema a kind: a kind without its schema does not compile. */
const schemas = {
  slice: group({ kind: z.literal("slice"), ...band, ...treatmentOf("slice"), roots }),
  weave: group({ kind: z.literal("weave"), ...band, ...treatmentOf("weave"), roots, ...stitching }),
  backcomb: group({
    kind: z.literal("backcomb"),
    ...band,
    ...treatmentOf("backcomb"),
    ...stitching,
    ...backcombing,
  }),
  painted: group({
    kind: z.literal("painted"),
    ...band,
    ...treatmentOf("painted"),
    painting: group(painting),
  }),
  "left-out": group({ kind: z.literal("left-out"), ...band, name: line(letters.name) }),
} satisfies { [K in SectionKind]: z.ZodMiniType<Section<K>> }

export const sectionSchema = z.discriminatedUnion(
  "kind",
  [schemas.slice, schemas.weave, schemas.backcomb, schemas.painted, schemas["left-out"]],
  { error: expected({ code: "kind", of: "section", kinds: Object.keys(schemas) }) },
) satisfies z.ZodMiniType<Section>
