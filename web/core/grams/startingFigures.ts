import type { TradeFigures } from "../../../geometry/hair/tradeFigures"
import { tradeFigures } from "../../../presets/formula/tradeFigures"
import { priorBelief } from "./calibration"
import { figuresToPlanBy } from "./figuresToPlanBy"

/** The figures of a plan before anything was weighed. */
export const startingFigures: TradeFigures = {
  ...tradeFigures,
  ...figuresToPlanBy(priorBelief(tradeFigures), []),
}
