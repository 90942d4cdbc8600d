import { exampleConsultation as example } from "../../../presets/plans/exampleConsultation"
import { daysOf } from "../cautions/asking/questions"
import {
  type Answer,
  type Consultation,
  type HairState,
  newConsultation,
  type Question,
  questionNames,
  zoneNames,
} from "../document/consultation"
import type { Plan } from "../document/schema"
import { addHoursMs, momentMs, type Now } from "../text/zonedTime"
import { examplePlan } from "./examplePlan"

/** The example as a visit of today: an invented client who was asked everything, tested and cleared. */
export function exampleVisit(now: Now): Plan {
  const plan = examplePlan()
  const { today } = daysOf({ date: plan.date }, now)
  return {
    ...plan,
    date: today,
    toning: { toner: example.toner, rootShade: null },
    consultation: consultationOf(today, now),
  }
}

const consultationOf = (today: string, now: Now): Consultation => ({
  ...newConsultation(),
  hair: Object.fromEntries(zoneNames.map((zone) => [zone, strand])),
  greyShare: example.greyShare,
  liftToLevel: example.level.target,
  finish: "cool",
  brightest: ["hairline", "top"],
  rootDistanceMm: example.rootDistanceMm,
  upkeepWeeks: example.upkeepWeeks,
  askedBy: example.askedBy,
  ageYears: example.ageYears,
  scalp: { seen: "calm", on: today },
  answers: Object.fromEntries(
    questionNames.map((name) => [name, { said: saidTo(name), on: today, visit: today } satisfies Answer]),
  ),
  alertTests: [tonerTest(today, now)],
  strandTests: [{ product: example.strandTested, outcome: "held" }],
  passes: [{ ...example.override, on: today, visit: today }],
})

const saidTo = (name: Question): Answer["said"] => (name === "homeColour" ? "yes" : "no")

const untouched: HairState = {
  level: example.level.now,
  history: [],
  porosity: "usual",
  stretch: "springs-back",
}
const strand = {
  roots: untouched,
  midLengths: untouched,
  ends: {
    ...untouched,
    level: example.level.ends,
    history: ["coloured" as const],
    porosity: "high" as const,
  },
}

/** Applied three days ago and read a day later than its hours. */
const tonerTest = (today: string, now: Now): Consultation["alertTests"][number] => ({
  product: example.toner.product,
  place: "behind the ear",
  appliedAt: hoursBefore(now, 72),
  result: { outcome: "clear", readBy: example.askedBy, readAt: hoursBefore(now, 23) },
  validUntil: null,
  visit: today,
  changedSince: { said: "no", on: today },
})

const hoursBefore = ({ moment }: Now, hours: number) =>
  new Date(addHoursMs(momentMs(moment) ?? 0, -hours)).toISOString()
