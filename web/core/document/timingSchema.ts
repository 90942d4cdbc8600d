import { choice, id, line, lines, list, number, wholeNumber } from "./fields"
import { counts, letters, limits } from "./limits"
import { comforts, foilKinds, foilTaps, type ServiceRecord, stretches, wholeTaps } from "./serviceRecord"
import type { TimingChoices } from "./timingChoices"
import { z } from "./zod"

/** How the visit is timed, and what happened at the chair, as they are written to a file. */

const minute = number(limits.visitMin)
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

const pace = z.strictObject({ slice: placing, weave: placing, backcomb: placing })
const pairError = "expected 1 or 2, the pair of hands"
const rest = z.strictObject({
  fromMin: minute,
  toMin: minute,
  of: z.optional(z.literal([1, 2], { error: pairError })),
})
const people = list(line(letters.name), counts.people, "names")

export const timingSchema = z.strictObject({
  skill: choice(["expert", "usual", "learner"]),
  pace: z.nullable(pace),
  hands: z.literal([1, 2], { error: "expected 1 or 2 pairs of hands" }),
  people: z.optional(people),
  secondPace: z.optional(z.nullable(pace)),
  breaks: list(rest, counts.breaks, "breaks"),
  rinse: choice(["each", "together"]),
  heatMin: z.nullable(number(limits.heldMin)),
  heatC: z.optional(z.nullable(number(limits.heatC))),
  freshAt: z.optional(list(id, counts.sections, "foils")),
  bookingMin: z.nullable(number(limits.bookingMin)),
  lift: z.nullable(z.strictObject({ fromLevel: number(limits.level), toLevel: number(limits.level) })),
  strandTest: z.nullable(strandTest),
}) satisfies z.ZodMiniType<TimingChoices>

const milliseconds = number(limits.serviceMs)
const moment = line(letters.moment)

const tap = z.discriminatedUnion(
  "kind",
  [
    z.strictObject({
      kind: choice(foilTaps),
      foil: id,
      by: z.optional(z.literal([1, 2], { error: pairError })),
    }),
    z.strictObject({
      kind: z.literal("looked"),
      foil: id,
      seen: z.strictObject({
        level: number(limits.level),
        stretch: choice(stretches),
        comfort: choice(comforts),
        moist: z.boolean(),
      }),
    }),
    z.strictObject({ kind: z.literal("mixed"), bowl: z.optional(wholeNumber(limits.bowl)) }),
    z.strictObject({ kind: choice(wholeTaps) }),
    z.strictObject({ kind: z.literal("alarm"), what: line(letters.note) }),
  ],
  { error: "expected a tap at the chair" },
)

/** What the red button was touched for, and when by the wall clock. */
export const alarmSchema = z.strictObject({ wallAt: moment, what: line(letters.note) })

export const serviceSchema = z.strictObject({
  startedAt: moment,
  people: z.optional(people),
  foils: list(
    z.strictObject({
      id,
      mapNumber: wholeNumber(limits.mapNumber),
      kind: z.optional(choice(foilKinds)),
      limitMin: minute,
      firstLookMin: minute,
      plannedOnMin: minute,
      plannedMinutesOn: minute,
    }),
    counts.sections,
    "foils",
  ),
  log: list(
    z.strictObject({
      tap,
      atMs: milliseconds,
      wallAt: moment,
      onAtMs: z.nullable(milliseconds),
      undone: z.boolean(),
      note: z.nullable(lines(letters.note)),
    }),
    counts.taps,
    "taps",
  ),
  clockNotes: list(
    z.strictObject({ atMs: milliseconds, wallAt: moment, note: lines(letters.note) }),
    counts.taps,
    "notes",
  ),
}) satisfies z.ZodMiniType<ServiceRecord>
