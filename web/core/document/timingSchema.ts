import { expected } from "../fields/expected"
import { choice, id, line, list, number } from "../fields/fields"
import { counts, letters, limits } from "../fields/limits"
import { z } from "../fields/zod"
import { byFoilKind } from "../kinds/kindRecords"
import type { TimingChoices } from "./timingChoices"

/** How the visit is timed, as it is written to a file. */

export const minute = number(limits.visitMin)
const placing = z.strictObject({
  low: number(limits.placeMin),
  mid: number(limits.placeMin),
  high: number(limits.placeMin),
})

const strandTest = z.strictObject({
  product: line(letters.name),
  developerVolume: number(limits.developerVolume),
  startLevel: number(limits.level),
  rows: list(
    z.strictObject({ minutes: number(limits.heldMin), level: number(limits.level) }),
    counts.strandRows,
    "rows",
  ),
})

const pace = z.strictObject(byFoilKind(() => z.optional(placing)))
export const oneOrTwo = expected({ code: "one-or-two" })
const rest = z.strictObject({
  fromMin: minute,
  toMin: minute,
  of: z.optional(z.literal([1, 2], { error: oneOrTwo })),
})
export const people = list(line(letters.name), counts.people, "names")

export const timingSchema = z.strictObject({
  skill: choice(["expert", "usual", "learner"]),
  pace: z.nullable(pace),
  hands: z.literal([1, 2], { error: oneOrTwo }),
  people: z.optional(people),
  secondPace: z.optional(z.nullable(pace)),
  breaks: list(rest, counts.breaks, "breaks"),
  rinse: choice(["each", "together"]),
  heatMin: z.nullable(number(limits.heldMin)),
  heatC: z.optional(z.nullable(number(limits.heatC))),
  freshAt: z.optional(list(id, counts.sections, "foils")),
  bookingMin: z.nullable(number(limits.bookingMin)),
  isDried: z.optional(z.boolean()),
  assistantSide: z.optional(choice(["left", "right"])),
  lift: z.nullable(z.strictObject({ fromLevel: number(limits.level), toLevel: number(limits.level) })),
  strandTest: z.nullable(strandTest),
}) satisfies z.ZodMiniType<TimingChoices>
