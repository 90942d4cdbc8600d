import { describe, expect, it } from "vitest"
import { houseProducts } from "../../presets/formula/houseProducts"
import { morePermeable } from "../../web/core/cautions/rules/permeability"
import { placedInTurn } from "../../web/core/mixing/bowls"
import { chooseDeveloper } from "../../web/core/mixing/developer"
import { planMix } from "../../web/core/mixing/mix"
import { consistencyFor, ratioFor } from "../../web/core/mixing/ratio"
import { labelPercent, onHeadPercent } from "../../web/core/mixing/strength"

const [powder] = houseProducts

// Common practice, no source: natural level 7, 3 to 4 levels wanted, foils: 20 vol at 1 : 2, 20 g lightener + 40 g
// developer = 60 g for a generous face frame with backcombed panels. One printed table: 20 vol lifts 3 to 4 levels.
describe("the worked choice of common practice", () => {
  const calm = { hairline: false, fine: false, porous: false, lightened: false }
  const choose = (fromLevel: number, liftToLevel: number) =>
    chooseDeveloper(powder, { fromLevel, liftToLevel, ...calm })
  const ratio = ratioFor(consistencyFor({ kind: "slice", carrier: "foil", wideCoverage: false }), powder)

  it("is 20 vol for 3 levels, and for 4", () => {
    expect(choose(7, 10)).toMatchObject({ kind: "chosen", volume: 20 })
    expect(choose(6, 10)).toMatchObject({ kind: "chosen", volume: 20 })
  })

  it("is 1 : 2 in foils", () => expect(ratio).toEqual({ lightener: 1, developer: 2 }))

  it("is 20 g + 40 g for 51 g on the hair, in one bowl of 60 g or two of the usual size", () => {
    // 51 g and 5 % and 6 g are 59.55 g: eight foils of 4.25 g and two backcombed panels of 8.5 g.
    const grams = [...Array<number>(8).fill(4.25), 8.5, 8.5]
    const foils = placedInTurn(
      grams.map((high, i) => ({
        id: `f${i}`,
        productG: { low: high / 2, mid: 0.75 * high, high },
        placeMin: 2,
      })),
    )
    const mixed = (mostMixG: number) => {
      const result = planMix(foils, {
        sheet: powder,
        recipe: { ratio, developerPercent: labelPercent(20), additives: [], scaleStepG: 1 },
        developerPrice: null,
        mostMixG,
      })
      if (!result.ok) throw new Error(result.problems[0].code)
      return result.mix.bowls.map(({ lightenerG, developerG }) => [lightenerG, developerG])
    }
    expect(mixed(60)).toEqual([[20, 40]])
    const two = mixed(40)
    expect(two).toHaveLength(2)
    // Each bowl keeps its own 6 g, so that two of them are 2 + 4 g more.
    expect(two.reduce((sum, [lightener]) => sum + lightener, 0)).toBe(22)
  })
})

describe("exposure", () => {
  it.each([
    [30, 2, 6],
    [40, 2, 8],
    [40, 1, 6],
    [20, 1.5, 3.6],
    [20, 3, 4.5],
  ])("%d vol at 1 : %d is %d %% on the head", (volume, developer, percent) => {
    expect(onHeadPercent(labelPercent(volume), { lightener: 1, developer })).toBeCloseTo(percent, 12)
  })

  // J Soc Cosmet Chem 1993;44:358-9, Table III: 3.59, 9.78 and 45.2 (1e-15 m2/s).
  it("opens hair 2.7 times in an hour of 6 % peroxide, 12.6 times in half an hour of bleach cream", () => {
    expect(morePermeable.peroxideHour).toBeCloseTo(2.7, 1)
    expect(morePermeable.creamHalfHour).toBeCloseTo(12.6, 1)
  })
})
