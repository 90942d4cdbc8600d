import { describe, expect, it } from "vitest"
import { startingFigures } from "../../../../presets/formula/startingFigures"
import { tradeFigures } from "../../../../presets/formula/tradeFigures"
import { priorBelief } from "../../../../web/core/grams/calibration"
import { figuresToPlanBy } from "../../../../web/core/grams/figuresToPlanBy"

describe("the figures of a plan before anything was weighed", () => {
  const fitted = figuresToPlanBy(priorBelief(tradeFigures), [])

  it.each(["lossG", "soakGPerG", "coatMgPerCm2"] as const)(
    "%s is what the fit makes of the trade's",
    (name) => {
      for (const end of ["low", "mid", "high"] as const)
        expect(startingFigures[name][end]).toBeCloseTo(fitted[name][end], 5)
    },
  )
})
