import { type Question, questionNames } from "../document/consultation"
import type { Plan } from "../document/schema"
import type { Now } from "../text/zonedTime"
import type { NotAsked, NotKnown } from "./asking/notAsked"
import { isCurrent, isOfToday, questionRows } from "./asking/questions"
import type { Finding } from "./cautions"
import { checkVisit, holding } from "./cautions"
import { whyNotCounting } from "./rules/alertTest"
import type { FieldName } from "./rules/rule"
import { testMomentOf } from "./rules/testRules"
import { visitOf } from "./visitOfPlan"

/**
 * Whether a plan may be mixed: a stop holds it, or what can hurt has not been asked, or it is cleared by answers of a
 * day. Worked out here alone; screens, sheets and commands tell it.
 */
export type Clearance = {
  state: "stop" | "not-asked" | "cleared"
  /** The day it is true of, by the wall calendar, "YYYY-MM-DD". */
  day: string
  stops: readonly Finding[]
  notAsked: readonly NotAsked[]
  cautions: readonly Finding[]
  notKnown: readonly NotKnown[]
  by: ClearedBy
}

/** What a plan is cleared by. */
export type ClearedBy = {
  answers: number
  /** Patch tests that count today. */
  tests: number
  letters: number
  overrides: number
  askedBy: string
}

/** `begunAt`: when the service of the plan began that goes on; over midnight its answers and tests count still. */
export function clearanceOf(plan: Plan, now: Now, begunAt: string | null = null): Clearance {
  const visit = visitOf(plan, now, begunAt)
  const { consultation: known, days } = visit
  const { stops, cautions, notAsked, notKnown } = checkVisit(visit)
  const tested = testMomentOf(known, visit)
  const answers = questionNames.filter((name) => isCurrent(name, known.answers[name], days)).length
  return {
    state: stops.length > 0 ? "stop" : notAsked.length > 0 ? "not-asked" : "cleared",
    day: days.today,
    stops,
    notAsked,
    cautions,
    notKnown,
    by: {
      answers: answers + (known.ageYears === null ? 0 : 1) + (isOfToday(known.scalp?.on, days) ? 1 : 0),
      tests: known.alertTests.filter((test) => whyNotCounting(test, tested) === null).length,
      letters: cautions.filter(({ answered }) => answered !== null).length,
      overrides: cautions.filter(({ pass }) => pass !== null).length,
      askedBy: known.askedBy,
    },
  }
}

export type Holds = Pick<Clearance, "stops" | "notAsked">

/** Whether nothing more of these mixes is begun: under a stop of theirs, of any where nobody knows the mix, and while anything is not asked. */
export const holdsMix = ({ stops, notAsked }: Holds, ...mixes: readonly string[]) =>
  notAsked.length > 0 || (mixes.length === 0 ? stops : holding(stops, ...mixes)).length > 0

/** The questions still open that may be answered together by "no", asked aloud. */
export const openTogether = (notAsked: readonly NotAsked[]): Question[] =>
  notAsked.flatMap((thing) =>
    thing.code === "question" && !questionRows[thing.question].alone ? [thing.question] : [],
  )

/** The field that answers what was not asked. */
export function fieldOf(thing: NotAsked): FieldName {
  switch (thing.code) {
    case "question":
      return `question-${thing.question}`
    case "which-allergy":
      return "allergy"
    case "changed-since":
      return "patch-tests"
    default:
      return thing.code
  }
}
