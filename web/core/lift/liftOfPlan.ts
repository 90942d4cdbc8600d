import type { Range } from "../../../geometry/hair/tradeFigures"
import type { ProductSheet } from "../../../presets/formula/productSheet"
import { otherProductShare } from "../../../presets/timing/lift"
import { readyWithoutGoalMin } from "../../../presets/timing/pace"
import { hairStates } from "../document/consultation"
import type { StartFigures } from "../document/salon"
import type { Mix, Plan } from "../document/schema"
import type { StrandTest } from "../document/timingChoices"
import type { LiftConditions, LiftTraits } from "./lift"
import type { Weighted } from "./liftGrid"
import { normalised, priorTraits, readyRange } from "./liftGrid"
import { type LiftGoal, liftConditions } from "./scheduleReady"
import { type NarrowedLift, narrowLift, type StrandFault } from "./strandTest"

/** The levels said for the clock; else the darkest hair written down, and the level it is to be lifted to. */
export function goalOfPlan({ timing, consultation }: Plan): LiftGoal | null {
  if (timing?.lift) return timing.lift
  if (!consultation || consultation.liftToLevel === null) return null
  const levels = hairStates(consultation).flatMap(({ level }) => (level === null ? [] : [level]))
  const goal = { fromLevel: Math.min(...levels), toLevel: consultation.liftToLevel }
  return levels.length > 0 && goal.toLevel > goal.fromLevel ? goal : null
}

/** The level at which a foil is called off, also where nobody wrote down the level it starts from. */
export const targetOfPlan = ({ timing, consultation }: Plan): number | null =>
  timing?.lift?.toLevel ?? consultation?.liftToLevel ?? null

/** The mix of a plan that a strand was tested in, or null where no mix has that product and developer now. */
export const testedMix = ({ mixes }: Plan, { product, developerVolume }: StrandTest): Mix | null =>
  mixes.find((mix) => mix.product === product && mix.developerVolume === developerVolume) ?? null

export type LiftKnown = {
  conditions: LiftConditions
  traits: readonly Weighted<LiftTraits>[]
  /** What the strand test says, where one was made in this product and developer. */
  narrowed: NarrowedLift | { refused: StrandFault } | null
  /** Whether a strand in another mix has narrowed this one: it is the same hair. */
  isBorrowed: boolean
}

/** What is known round a strand test. */
export type StrandAround = {
  /** The sheet of the product that the strand was tested in. */
  testedSheet?: ProductSheet | undefined
  /** What the salon starts from. */
  start?: StartFigures | undefined
}

/**
 * What is known of the lift of a mix, or null where its sheet prints none for its developer. A strand narrows its own
 * mix by what was seen; every other mix shares the hair, so it learns how fast that is and where in a printed range it
 * falls. Another developer is a matter of strength, which the curve scales, with a range; another product is told half.
 */
export function liftKnown(
  mix: Mix,
  sheet: ProductSheet | undefined,
  test: StrandTest | null,
  { testedSheet = test?.product === mix.product ? sheet : undefined, start }: StrandAround = {},
): LiftKnown | null {
  const conditions = liftConditions(mix, sheet)
  if (!conditions) return null
  const halfTimeMin = start?.halfTimeMin ?? undefined
  const prior = priorTraits(conditions.printed, halfTimeMin)
  const unknown: LiftKnown = { conditions, traits: prior, narrowed: null, isBorrowed: false }
  if (!test || test.rows.length === 0) return unknown
  const tested = liftConditions({ ...mix, developerVolume: test.developerVolume }, testedSheet)
  if (!tested) return unknown
  const testedPrior = priorTraits(tested.printed, halfTimeMin)
  const narrowed = narrowLift(testedPrior, { ...test, conditions: tested })
  const isSame = test.product === mix.product && test.developerVolume === mix.developerVolume
  if ("refused" in narrowed) return isSame ? { ...unknown, narrowed } : unknown
  if (isSame) return { ...unknown, narrowed, traits: narrowed.traits }
  const share = test.product === mix.product ? 1 : otherProductShare
  return { ...unknown, traits: borrowed(prior, { testedPrior, narrowed, share }), isBorrowed: true }
}

/**
 * Step by step the grids of all mixes run through the same possibilities of the hair, each within its own printed
 * range: what the strand made of a step's weight is made of it here too, or a share of that.
 */
function borrowed(
  prior: readonly Weighted<LiftTraits>[],
  {
    testedPrior,
    narrowed: { traits },
    share,
  }: { testedPrior: readonly Weighted<LiftTraits>[]; narrowed: NarrowedLift; share: number },
): Weighted<LiftTraits>[] {
  return normalised(
    prior.map(({ of, weight }, step) => ({
      of,
      weight: weight * (traits[step].weight / testedPrior[step].weight) ** share,
    })),
  )
}

type Asked = StrandAround & { goal: LiftGoal | null; strandTest: StrandTest | null }

/** Minutes on until the goal with a mix; without a goal or a printed lift, when most foils are ready. */
export function readyWith(mix: Mix, sheet: ProductSheet | undefined, asked: Asked): Range {
  const { goal, strandTest } = asked
  const known = goal && liftKnown(mix, sheet, strandTest, asked)
  if (!goal || !known) return readyWithoutGoalMin
  return readyRange(known.traits, known.conditions, goal.toLevel - goal.fromLevel)
}
