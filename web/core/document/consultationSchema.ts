import { choice, day, line, lines, list, number } from "../fields/fields"
import { counts, letters, limits } from "../fields/limits"
import { z } from "../fields/zod"
import {
  allergyKinds,
  type Consultation,
  finishTones,
  hairHistories,
  questionNames,
  type StandingAllergy,
  scalps,
  strandParts,
  zoneNames,
} from "./consultation"

/** The consultation as it is written to a file: anything may be missing or null, and then is not known. */

const moment = line(letters.moment)
const yesNo = choice(["yes", "no"])

const hairState = z.strictObject({
  level: z.nullable(number(limits.level)),
  history: z.nullable(list(choice(hairHistories), counts.histories, "histories")),
  porosity: z.nullable(choice(["low", "usual", "high"])),
  stretch: z.nullable(choice(["springs-back", "stays-stretched", "breaks"])),
})

const answer = z.strictObject({ said: yesNo, on: z.nullable(day), visit: z.nullable(day) })

const alertTest = z.strictObject({
  product: line(letters.name),
  place: line(letters.name),
  appliedAt: moment,
  result: z.nullable(
    z.strictObject({ outcome: choice(["clear", "reacted"]), readBy: line(letters.name), readAt: moment }),
  ),
  validUntil: z.nullable(day),
  visit: z.nullable(day),
  changedSince: z.nullable(z.strictObject({ said: yesNo, on: z.nullable(day) })),
})

/** The allergies of a client's card. */
export const standingAllergies = list(
  z.strictObject({
    kind: choice(allergyKinds),
    to: line(letters.name),
    since: line(letters.name),
  }) satisfies z.ZodMiniType<StandingAllergy>,
  counts.allergies,
  "allergies",
)

export const consultationSchema = z.strictObject({
  hair: z.partialRecord(choice(zoneNames), z.partialRecord(choice(strandParts), hairState)),
  greyShare: z.nullable(number(limits.strandShare)),
  liftToLevel: z.nullable(number(limits.level)),
  finish: z.nullable(choice(finishTones)),
  brightest: list(choice(zoneNames), counts.zones, "zones"),
  rootDistanceMm: z.nullable(number(limits.rootDistanceMm)),
  rootMeltMm: z.nullable(number(limits.rootDistanceMm)),
  upkeepWeeks: z.nullable(number(limits.upkeepWeeks)),
  ageYears: z.nullable(number(limits.ageYears)),
  askedBy: line(letters.name),
  scalp: z.nullable(z.strictObject({ seen: choice(scalps), on: z.nullable(day) })),
  answers: z.partialRecord(choice(questionNames), answer),
  otherAllergy: z.strictObject({
    which: line(letters.note),
    when: line(letters.note),
    how: line(letters.note),
  }),
  blackHennaOn: z.nullable(day),
  alertTests: list(alertTest, counts.tests, "alert-tests"),
  strandTests: list(
    z.strictObject({ product: line(letters.name), outcome: choice(["held", "failed"]) }),
    counts.tests,
    "strand-tests",
  ),
  passes: list(
    z.strictObject({
      rule: line(letters.name),
      reason: lines(letters.note),
      by: line(letters.name),
      on: z.optional(day),
      visit: z.optional(day),
      mix: z.optional(line(letters.name)),
      about: z.optional(line(letters.note)),
    }),
    counts.passes,
    "overrides",
  ),
  letters: list(
    z.strictObject({ rule: line(letters.name), from: line(letters.name), dated: day, visit: day }),
    counts.passes,
    "doctors-letters",
  ),
  signatures: list(
    z.strictObject({
      by: line(letters.name),
      at: moment,
      questions: list(choice(questionNames), counts.questions, "questions"),
    }),
    counts.passes,
    "signatures",
  ),
  withdrawn: list(
    z.strictObject({
      rule: line(letters.name),
      about: z.optional(line(letters.note)),
      at: moment,
      by: line(letters.name),
    }),
    counts.passes,
    "withdrawn-stops",
  ),
}) satisfies z.ZodMiniType<Consultation>
