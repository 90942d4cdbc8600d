import type { Hair } from "../../../geometry/hair/hair"
import type { HeadSize } from "../../../geometry/scalp/headSize"
import { expected } from "../fields/expected"
import { day, group, id, line, lines, list, mixLetter, number } from "../fields/fields"
import { counts, letters, limits } from "../fields/limits"
import { z } from "../fields/zod"
import { sectionSchema } from "../kinds/sectionSchema"
import { lessonSchema } from "../technique/lessonSchema"
import { consultationSchema, standingAllergies } from "./consultationSchema"
import { hairlineSchema, whorlSchema, wornPartingSchema } from "./hairlineSchema"
import { planKind, planVersion } from "./planKind"
import { salonSchema } from "./salonSchema"
import { alarmSchema, serviceSchema } from "./serviceSchema"
import { timingSchema } from "./timingSchema"
import { toningSchema } from "./toningSchema"
import { workingSectionsSchema } from "./workingSectionsSchema"

/** The plan as it is written to a file, version 2. The file door is the only place that checks against it. */

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
  error: expected({ code: "kind", of: "head-size", kinds: ["caliper", "tape"] }),
}) satisfies z.ZodMiniType<HeadSize>

const headSchema = group({
  size: sizeSchema,
  hairline: hairlineSchema,
  /** The parting worn; not known when left out. */
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

const drawing = {
  head: headSchema,
  hair: hairSchema,
  mixes: list(mixSchema, counts.mixes, "mixes"),
  sections: list(sectionSchema, counts.sections, "sections"),
  /** What is toned with after rinsing. */
  toning: z.optional(toningSchema),
  /** Partings without hair taken that divide the head, and what lies between them. */
  workingSections: z.optional(workingSectionsSchema),
}

/** A foil that lightened hair: on which day, and the level last seen of it; null where nobody looked. */
const lightenedSchema = group({
  on: day,
  level: z.nullable(number(limits.level)),
  section: sectionSchema,
})

export const planSchema = group({
  kind: z.literal(planKind),
  version: z.literal(planVersion),
  id,
  name: line(letters.name),
  date: day,
  client: group({
    initials: line(letters.initials),
    /** The allergies that stand on the client's card, as it last said: an answer of today takes none of them back. */
    allergies: z.optional(standingAllergies),
  }),
  ...drawing,
  consultation: z.optional(consultationSchema),
  /** How the visit is to be timed; a plan without it is timed in the usual way. */
  timing: z.optional(timingSchema),
  /** Sheets, bottles, prices and learnt figures of the salon that rule the plan. */
  salon: z.optional(salonSchema),
  /** What happened at the chair the last time, with the drawing that was carried out. */
  service: z.optional(z.extend(serviceSchema, { drawn: z.optional(group(drawing)) })),
  /** What happened at the services before that one. */
  earlier: z.optional(list(serviceSchema, counts.services, "services")),
  /** Hair lightened at earlier services: each foil that went on, as it was drawn then. */
  lightened: z.optional(list(lightenedSchema, counts.lightened, "sections")),
  /** How far the hair has grown since the last of them, where it was measured. */
  regrowth: z.optional(group({ measuredMm: number(limits.regrowthMm) })),
  /** Foils kept for another day, as they were drawn. */
  later: z.optional(list(sectionSchema, counts.sections, "sections")),
  /** What the plan teaches, where it was laid from a technique or an educator wrote for a class. */
  lesson: z.optional(lessonSchema),
  /** What the red button was touched for while no service was going on. */
  alarms: z.optional(list(alarmSchema, counts.taps, "alarms")),
  note: lines(letters.note),
})

export type Plan = Readonly<z.infer<typeof planSchema>>
/** What happened at the last service, as done: the drawing is as it was carried out. */
export type DoneService = NonNullable<Plan["service"]>
export type Mix = Plan["mixes"][number]
/** A foil that lightened hair at an earlier service. */
export type Lightened = NonNullable<Plan["lightened"]>[number]

/** The published schema, for those who write plans with other tools. */
export const planJsonSchema = () =>
  z.toJSONSchema(planSchema, {
    // In JSON Schema read-only means "changed by the server alone"; here it only says that lists do not change in place.
    override: ({ jsonSchema }) => {
      delete jsonSchema.readOnly
    },
  })
