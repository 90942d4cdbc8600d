import { emergencyNames } from "../../../presets/chair/emergencies"
import { expected } from "../fields/expected"
import { choice, id, line, lines, list, mixLetter, moment, number, wholeNumber } from "../fields/fields"
import { counts, letters, limits } from "../fields/limits"
import { z } from "../fields/zod"
import { foilKinds } from "../kinds/kindRecords"
import { roots } from "../kinds/sectionSchema"
import {
  type AlarmTap,
  type ChairTap,
  comforts,
  foilTaps,
  type ServiceRecord,
  stretches,
  tonerTaps,
  toneZoneNames,
  wholeTaps,
} from "./serviceRecord"
import { minute, oneOrTwo, people } from "./timingSchema"

/** What happened at the chair, as it is written to a file. */

const milliseconds = number(limits.serviceMs)
const ids = list(id, counts.sections, "foils")
const pair = z.literal([1, 2], { error: oneOrTwo })
/** Whose deed it was, where there are two. */
const by = z.optional(pair)
const maybe = <T extends z.ZodMiniType>(schema: T) => z.nullable(schema)

const alarm = {
  what: choice([...emergencyNames, "other"] as const),
  step: z.optional(line(letters.name)),
  foils: z.optional(ids),
  words: z.optional(lines(letters.note)),
}

const tap = z.discriminatedUnion(
  "kind",
  [
    z.strictObject({
      kind: choice(foilTaps),
      foil: id,
      by,
      outOfTurn: z.optional(z.literal(true, { error: "expected true, or the field left out" })),
    }),
    z.strictObject({
      kind: z.literal("looked"),
      foil: id,
      seen: z.strictObject({
        level: maybe(number(limits.level)),
        stretch: maybe(choice(stretches)),
        comfort: maybe(choice(comforts)),
        moist: maybe(z.boolean()),
      }),
      by,
    }),
    z.strictObject({ kind: z.literal("carried-on"), foils: ids, by }),
    z.strictObject({ kind: z.literal("not-checked"), foils: ids, by }),
    z.strictObject({ kind: z.literal("mixed"), bowl: z.optional(wholeNumber(limits.bowl)), by }),
    z.strictObject({ kind: choice(wholeTaps), by }),
    z.strictObject({ kind: choice(tonerTaps), zone: choice(toneZoneNames), by }),
    z.strictObject({ kind: z.literal("alarm"), ...alarm }) satisfies z.ZodMiniType<AlarmTap>,
  ],
  {
    error: expected({
      code: "kind",
      of: "tap",
      kinds: [
        ...foilTaps,
        "looked",
        "carried-on",
        "not-checked",
        "mixed",
        ...wholeTaps,
        ...tonerTaps,
        "alarm",
      ],
    }),
  },
) satisfies z.ZodMiniType<ChairTap>

/** What the red button was touched for, and when by the wall clock. */
export const alarmSchema = z.strictObject({ wallAt: moment, ...alarm })

const grams = number(limits.bowlG)
const written = z.strictObject({ code: z.literal("in-words"), words: lines(letters.note) })
const noteError = { error: expected({ code: "chair-note" }) }

const tapNote = z.discriminatedUnion(
  "code",
  [
    z.strictObject({
      code: choice(["counts-from-earliest", "counts-from-now"]),
      foil: wholeNumber(limits.mapNumber),
      fromMin: minute,
    }),
    written,
  ],
  noteError,
)

const clockNote = z.discriminatedUnion(
  "code",
  [
    z.strictObject({
      code: choice(["clock-set-back", "slept-or-set-forward", "set-back-while-closed"]),
      byMs: number(limits.clockMs),
    }),
    written,
  ],
  noteError,
)

const foil = z.strictObject({
  id,
  mapNumber: wholeNumber(limits.mapNumber),
  kind: z.optional(choice(foilKinds)),
  mix: z.optional(mixLetter),
  roots,
  rootsLater: z.optional(z.strictObject({ limitMin: minute, plannedAfterMin: minute })),
  lane: z.optional(pair),
  goalLevel: z.optional(number(limits.level)),
  limitMin: minute,
  firstLookMin: minute,
  plannedOnMin: minute,
  plannedMinutesOn: minute,
})

const bowl = z.strictObject({
  mix: mixLetter,
  product: line(letters.name),
  developerVolume: number(limits.developerVolume),
  ratio: z.strictObject({ lightener: number(limits.ratioPart), developer: number(limits.ratioPart) }),
  lightenerG: grams,
  developerG: grams,
  additives: z.optional(
    list(z.strictObject({ name: line(letters.name), grams }), counts.additives, "additives"),
  ),
  foils: ids,
  potLifeMin: minute,
  mixedAtMs: maybe(milliseconds),
  leftG: maybe(grams),
})

const toner = z.strictObject({
  zone: choice(toneZoneNames),
  product: maybe(line(letters.name)),
  developerVolume: maybe(number(limits.developerVolume)),
  productG: maybe(grams),
  developerG: maybe(grams),
  clearG: z.optional(grams),
  plannedMin: minute,
  limitMin: maybe(minute),
  onAtMs: maybe(milliseconds),
  offAtMs: maybe(milliseconds),
  leftG: z.optional(maybe(grams)),
})

export const serviceSchema = z.strictObject({
  startedAt: moment,
  endedAt: z.optional(moment),
  people: z.optional(people),
  foils: list(foil, counts.sections, "foils"),
  bowls: z.optional(list(bowl, counts.bowls, "bowls")),
  toners: z.optional(list(toner, counts.toners, "toners")),
  asked: z.optional(z.strictObject({ by: line(letters.name), wallAt: moment })),
  log: list(
    z.strictObject({
      tap,
      atMs: milliseconds,
      wallAt: moment,
      onAtMs: maybe(milliseconds),
      undone: z.boolean(),
      note: maybe(tapNote),
    }),
    counts.taps,
    "taps",
  ),
  clockNotes: list(
    z.strictObject({ atMs: milliseconds, wallAt: moment, note: clockNote }),
    counts.taps,
    "notes",
  ),
}) satisfies z.ZodMiniType<ServiceRecord>
