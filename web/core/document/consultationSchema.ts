import {
  type Consultation,
  finishTones,
  hairHistories,
  questionNames,
  strandParts,
  zoneNames,
} from "./consultation"
import { choice, day, line, lines, list, number } from "./fields"
import { counts, letters, limits } from "./limits"
import { z } from "./zod"

/** The consultation as it is written to a file: anything may be missing or null, and then is not known. */

const moment = line(letters.moment)
const yesNo = choice(["yes", "no"])

const hairState = z.strictObject({
  level: z.nullable(number(limits.level)),
  history: z.nullable(list(choice(hairHistories), counts.histories, "things the hair has been through")),
  porosity: z.nullable(choice(["low", "usual", "high"])),
  stretch: z.nullable(choice(["springs-back", "stays-stretched", "breaks"])),
})

const alertTest = z.strictObject({
  product: line(letters.name),
  place: line(letters.name),
  appliedAt: moment,
  result: z.nullable(
    z.strictObject({ outcome: choice(["clear", "reacted"]), readBy: line(letters.name), readAt: moment }),
  ),
  validUntil: z.nullable(day),
  changedSince: z.nullable(yesNo),
})

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
  scalp: z.nullable(choice(["calm", "sensitive", "irritated", "broken"])),
  answers: z.partialRecord(choice(questionNames), yesNo),
  alertTests: list(alertTest, counts.tests, "alert tests"),
  strandTests: list(
    z.strictObject({ product: line(letters.name), outcome: choice(["held", "failed"]) }),
    counts.tests,
    "strand tests",
  ),
  passes: list(
    z.strictObject({
      rule: line(letters.name),
      reason: lines(letters.note),
      by: line(letters.name),
      mix: z.optional(line(letters.name)),
      about: z.optional(line(letters.note)),
    }),
    counts.passes,
    "stops passed with a reason",
  ),
}) satisfies z.ZodMiniType<Consultation>
