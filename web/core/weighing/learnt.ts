import { productG } from "../../../geometry/hair/product"
import type { Range } from "../../../geometry/hair/tradeFigures"
import type { FoilKind } from "../../../geometry/section/section"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import type { LearntFigures } from "../document/salon"
import type { Belief } from "../statistics/regression"
import {
  gramsFor,
  learn,
  learntFigures,
  type ProductFigures,
  priorBelief,
  usualNeedOf,
  type Weighing,
} from "./calibration"
import { weighingsNeeded } from "./weighingsNeeded"

export type NamedWeighing = Weighing & { product: string; kind: FoilKind | null }

/** What weighings teach of everything, and of each product, each kind and both, wherever there are enough of them. */
export function learntOf(weighings: readonly NamedWeighing[]): LearntFigures[] {
  const prior = priorBelief(tradeFigures)
  const products = [null, ...new Set(weighings.map(({ product }) => product))]
  const kinds = [null, ...new Set(weighings.flatMap(({ kind }) => kind ?? []))]
  return products.flatMap((product) =>
    kinds.flatMap((kind): LearntFigures[] => {
      const own = weighings.filter(
        (row) => (product === null || row.product === product) && (kind === null || row.kind === kind),
      )
      const isEnough = own.length > 0 && weighingsNeeded(prior, own).more === 0
      return isEnough ? [{ product, kind, weighings: own.length, ...figuresToPlanBy(prior, own) }] : []
    }),
  )
}

/**
 * The figures as learnt, their ranges drawn in or out together until a usual bowl has the range that the next weighing
 * of it has. Each by itself is known less well than the sum that the scale shows.
 */
export function figuresToPlanBy(prior: Belief, weighings: readonly Weighing[]): ProductFigures {
  const belief = learn(prior, weighings)
  const alone = learntFigures(belief)
  const usual = usualNeedOf(weighings)
  const apart = productG(usual, { ...tradeFigures, ...alone })
  const together = gramsFor(belief, usual, prior)
  const share = (together.high - together.mid) / (apart.high - apart.mid)
  const drawn = ({ mid, high }: Range): Range => {
    const reach = share * (high - mid)
    return { low: Math.max(0, mid - reach), mid, high: mid + reach }
  }
  return {
    lossG: drawn(alone.lossG),
    soakGPerG: drawn(alone.soakGPerG),
    coatMgPerCm2: drawn(alone.coatMgPerCm2),
  }
}
