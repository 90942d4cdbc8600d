import type { FoilKind } from "../../../geometry/section/section"
import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import type { LearntFigures, StartFigures } from "../document/salon"
import type { Weighing } from "../grams/calibration"
import { figuresToPlanBy } from "../grams/figuresToPlanBy"
import { startBelief } from "../grams/startBelief"

const { leastToLearnFrom } = calibrationFigures

export type NamedWeighing = Weighing & { product: string; kind: FoilKind | null }

/**
 * What weighings teach of everything, and of each product, each kind and both, wherever there are enough of them. Whether they
 * agree does not decide it: bowls that agree by luck would print too narrow a range, and those that do not would print
 * that of the starting figures, too narrow as well. What other salons told is known from the first bowl.
 */
export function learntOf(weighings: readonly NamedWeighing[], start?: StartFigures): LearntFigures[] {
  const prior = startBelief(start)
  const least = start?.grams ? 0 : leastToLearnFrom
  const products = [null, ...new Set(weighings.map(({ product }) => product))]
  const kinds = [null, ...new Set(weighings.flatMap(({ kind }) => kind ?? []))]
  return products.flatMap((product) =>
    kinds.flatMap((kind): LearntFigures[] => {
      const own = weighings.filter(
        (row) => (product === null || row.product === product) && (kind === null || row.kind === kind),
      )
      const isEnough = own.length >= (product === null && kind === null ? least : leastToLearnFrom)
      return isEnough ? [{ product, kind, weighings: own.length, ...figuresToPlanBy(prior, own) }] : []
    }),
  )
}
