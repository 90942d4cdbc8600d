import type { Range } from "../../geometry/tradeFigures"
import { readyWithoutGoalMin } from "../../presets/pace"
import type { ProductSheet } from "../../presets/productSheet"
import { hairStates } from "../plan/consultation"
import type { Mix, Plan, Refusal } from "../plan/schema"
import type { StrandTest } from "../plan/timingChoices"
import type { LiftConditions, LiftTraits } from "./lift"
import type { Weighted } from "./liftGrid"
import { priorTraits, readyRange } from "./liftGrid"
import { type LiftGoal, liftConditions } from "./scheduleReady"
import { type NarrowedLift, narrowLift } from "./strandTest"

/** The levels said for the clock; else the darkest hair written down, and the level it is to be lifted to. */
export function goalOfPlan({ timing, consultation }: Plan): LiftGoal | null {
  if (timing?.lift) return timing.lift
  if (!consultation || consultation.liftToLevel === null) return null
  const levels = hairStates(consultation).flatMap(({ level }) => (level === null ? [] : [level]))
  const goal = { fromLevel: Math.min(...levels), toLevel: consultation.liftToLevel }
  return levels.length > 0 && goal.toLevel > goal.fromLevel ? goal : null
}

/** The mix of a plan that a strand was tested in, or null where no mix has that product and developer now. */
export const testedMix = ({ mixes }: Plan, { product, developerVolume }: StrandTest): Mix | null =>
  mixes.find((mix) => mix.product === product && mix.developerVolume === developerVolume) ?? null

export type LiftKnown = {
  conditions: LiftConditions
  traits: readonly Weighted<LiftTraits>[]
  /** What the strand test says, where one was made in this product and developer. */
  narrowed: NarrowedLift | Refusal | null
}

/** What is known of the lift of a mix, or null where its sheet prints none for its developer. */
export function liftKnown(
  mix: Mix,
  sheet: ProductSheet | undefined,
  test: StrandTest | null,
): LiftKnown | null {
  const conditions = liftConditions(mix, sheet)
  if (!conditions) return null
  const prior = priorTraits(conditions.printed)
  const isSame = test && test.product === mix.product && test.developerVolume === mix.developerVolume
  if (!isSame || test.rows.length === 0) return { conditions, traits: prior, narrowed: null }
  const narrowed = narrowLift(prior, { rows: test.rows, startLevel: test.startLevel, conditions })
  return { conditions, narrowed, traits: "refused" in narrowed ? prior : narrowed.traits }
}

/** Minutes on until the goal with a mix; without a goal or a printed lift, when most foils are ready. */
export function readyWith(
  mix: Mix,
  sheet: ProductSheet | undefined,
  { goal, strandTest }: { goal: LiftGoal | null; strandTest: StrandTest | null },
): Range {
  const known = goal && liftKnown(mix, sheet, strandTest)
  if (!goal || !known) return readyWithoutGoalMin
  return readyRange(known.traits, known.conditions, goal.toLevel - goal.fromLevel)
}
