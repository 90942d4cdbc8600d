import type { FoilKind } from "../../../geometry/section/section"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import type { LearntFigures } from "../document/salon"
import { priorBelief, type Weighing } from "../grams/calibration"
import { figuresToPlanBy } from "../grams/figuresToPlanBy"

export type NamedWeighing = Weighing & { product: string; kind: FoilKind | null }

/**
 * What weighings teach of everything, and of each product, each kind and both, wherever there are enough of them. Whether they
 * agree does not decide it: bowls that agree by luck would print too narrow a range, and those that do not would print
 * that of the starting figures, too narrow as well.
 */
export function learntOf(weighings: readonly NamedWeighing[]): LearntFigures[] {
  const prior = priorBelief(tradeFigures)
  const products = [null, ...new Set(weighings.map(({ product }) => product))]
  const kinds = [null, ...new Set(weighings.flatMap(({ kind }) => kind ?? []))]
  return products.flatMap((product) =>
    kinds.flatMap((kind): LearntFigures[] => {
      const own = weighings.filter(
        (row) => (product === null || row.product === product) && (kind === null || row.kind === kind),
      )
      const isEnough = own.length >= calibrationFigures.leastToLearnFrom
      return isEnough ? [{ product, kind, weighings: own.length, ...figuresToPlanBy(prior, own) }] : []
    }),
  )
}
