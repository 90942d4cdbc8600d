import { type Consultation, questionNames } from "../document/consultation"
import type { Plan } from "../document/schema"
import type { NotAsked } from "./asking/notAsked"
import { isAsked } from "./asking/questions"

/** How much of a step is done: n of m. */
export type StepCount = { done: number; of: number }

/** The three steps of the consultation and the goal that closes it, each with what is known of it. */
export function stepCounts(
  { head }: Pick<Plan, "head">,
  known: Consultation,
  notAsked: readonly NotAsked[],
  isMeasured: boolean,
): Record<"ask" | "hair" | "head" | "goal", StepCount> {
  const states = Object.values(known.hair).flatMap((strand) => Object.values(strand))
  const someHair = (field: "level" | "history" | "porosity" | "stretch") =>
    states.some((state) => state[field] !== null)
  return {
    ask: askCount(known, notAsked),
    hair: counted(
      someHair("level"),
      someHair("history"),
      someHair("porosity"),
      someHair("stretch"),
      known.greyShare !== null,
    ),
    head: counted(isMeasured, head.wornParting !== undefined),
    goal: counted(
      known.liftToLevel !== null,
      known.finish !== null,
      known.brightest.length > 0,
      known.rootDistanceMm !== null,
      known.upkeepWeeks !== null,
    ),
  }
}

const counted = (...known: readonly boolean[]): StepCount => ({
  done: known.filter(Boolean).length,
  of: known.length,
})

/** Age, scalp, every question that is asked, and what an answer makes ask besides. */
function askCount(known: Consultation, notAsked: readonly NotAsked[]): StepCount {
  const ofHair = ["history", "stretch"]
  const open = notAsked.filter(({ code }) => !ofHair.includes(code)).length
  const besides = [
    known.answers.otherAllergy?.said === "yes",
    known.answers.blackHennaTattoo?.said === "yes",
    ...known.alertTests.map(({ result }) => result?.outcome === "clear"),
  ].filter(Boolean).length
  const of = 2 + questionNames.filter((name) => isAsked(name, known)).length + besides
  return { done: of - open, of }
}
