import type { TradeFigures } from "../../../geometry/hair/tradeFigures"
import { type FoilKind, isFoil, type Section } from "../../../geometry/section/section"
import { startingFigures } from "../../../presets/formula/startingFigures"
import type { LearntFigures } from "../document/salon"
import type { Plan } from "../document/schema"
import { remembered } from "../memory/remembered"

/**
 * The figures a section is measured by, in its own mix or in another: what the plan's salon has learnt comes before what
 * the trade supposes.
 */
export function figuresFor(
  section: Section,
  { mixes, salon }: Pick<Plan, "mixes" | "salon">,
  mix = isFoil(section) ? section.mix : "",
): TradeFigures {
  if (!salon || salon.learnt.length === 0 || !isFoil(section)) return startingFigures
  const product = mixes.find(({ id }) => id === mix)?.product
  const learnt = nearest(salon.learnt, product, section.kind)
  return learnt ? joined(learnt) : startingFigures
}

const joined = remembered(
  ({ lossG, soakGPerG, coatMgPerCm2 }: LearntFigures): TradeFigures => ({
    ...startingFigures,
    lossG,
    soakGPerG,
    coatMgPerCm2,
  }),
)

/** Learnt of this product and kind, else of the product, else of the kind, else of everything. */
function nearest(learnt: readonly LearntFigures[], product: string | undefined, kind: FoilKind) {
  const find = (byProduct: boolean, byKind: boolean) =>
    learnt.find(
      (figures) =>
        figures.product === (byProduct ? product : null) && figures.kind === (byKind ? kind : null),
    )
  return find(true, true) ?? find(true, false) ?? find(false, true) ?? find(false, false)
}
