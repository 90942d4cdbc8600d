import type { ProductNeed } from "../../geometry/hair/product"
import { factorsOf, type Weighing, weightOf } from "../../web/core/grams/calibration"
import { dot } from "../../web/core/statistics/matrix"
import type { Belief } from "../../web/core/statistics/regression"
import { makeDice } from "./dice"

/** A salon whose three figures and scatter are known. */
export type DrawnSalon = { truth: readonly number[]; sd: number }
export type SalonDice = ReturnType<typeof salonDice>

export function salonDice(start: number) {
  const { even, normal } = makeDice(start)
  /** Gamma of shape 3: three exponentials. */
  const gamma3 = () => -Math.log((1 - even()) * (1 - even()) * (1 - even()))
  return { even, normal, gamma3 }
}

/** A salon drawn from a belief of shape 3 whose figures do not lean on each other. */
export function drawSalon(prior: Belief, dice: SalonDice): DrawnSalon {
  const sd = Math.sqrt(prior.scale / dice.gamma3())
  const truth = prior.mean.map((mean, j) => mean + (sd / Math.sqrt(prior.precision[j][j])) * dice.normal())
  return { truth, sd }
}

/** A bowl of 4 to 12 foils, each of so many grams of hair and cm2 of strand. */
export function drawNeed(
  dice: SalonDice,
  hairG: readonly [number, number] = [0.4, 1.4],
  areaCm2: readonly [number, number] = [150, 450],
): ProductNeed {
  const panels = 4 + Math.floor(dice.even() * 9)
  const between = ([low, high]: readonly [number, number]) => low + (high - low) * dice.even()
  return { panels, hairG: panels * between(hairG), strandAreaCm2: panels * between(areaCm2) }
}

export const trueGrams = ({ truth }: DrawnSalon, need: ProductNeed) => dot(factorsOf(need), truth)

/** What the scale shows: scattered about the truth as the belief says that weighings are. */
export function weigh(
  salon: DrawnSalon,
  need: ProductNeed,
  { prior, dice }: { prior: Belief; dice: SalonDice },
): Weighing {
  const scatter = (salon.sd / Math.sqrt(weightOf(need, prior))) * dice.normal()
  return { ...need, productG: trueGrams(salon, need) + scatter }
}
