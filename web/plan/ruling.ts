import { isFoil, type Section } from "../../geometry/section/section"
import type { TradeFigures } from "../../geometry/tradeFigures"
import { tradeFigures } from "../../presets/tradeFigures"
import type { LearntFigures } from "./salon"
import type { Plan } from "./schema"

const joined = new WeakMap<LearntFigures, TradeFigures>()

/** The figures a section is measured by: what the plan's salon has learnt comes before what the trade supposes. */
export function figuresRuling(section: Section, plan: Pick<Plan, "mixes" | "salon">): TradeFigures {
  const learnt = isFoil(section) ? nearest(section, plan) : null
  if (!learnt) return tradeFigures
  const { lossG, soakGPerG, coatMgPerCm2 } = learnt
  const ruling = joined.get(learnt) ?? { ...tradeFigures, lossG, soakGPerG, coatMgPerCm2 }
  joined.set(learnt, ruling)
  return ruling
}

/** Learnt of this product and kind, else of the product, else of the kind, else of everything. */
function nearest(
  { kind, mix }: { kind: string; mix: string },
  { mixes, salon }: Pick<Plan, "mixes" | "salon">,
): LearntFigures | null {
  const product = mixes.find(({ id }) => id === mix)?.product
  const closeness = (figures: LearntFigures) =>
    (figures.product === product ? 2 : 0) + (figures.kind === kind ? 1 : 0)
  const fitting = (salon?.learnt ?? []).filter(
    (figures) =>
      (figures.product === null || figures.product === product) &&
      (figures.kind === null || figures.kind === kind),
  )
  return fitting.toSorted((a, b) => closeness(b) - closeness(a))[0] ?? null
}
