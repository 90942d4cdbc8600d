import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { bowlFigures } from "../../../../presets/formula/bowlFigures"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { additivesOf } from "../../../../web/core/mixing/additives"
import { type BowlFoil, placedInTurn, planBowls } from "../../../../web/core/mixing/bowls"
import { type MixChoice, planMix } from "../../../../web/core/mixing/mix"
import { mixAmounts, type Recipe, toMixG } from "../../../../web/core/mixing/mixAmounts"
import { say } from "../../../../web/words/say"
import { bowlFoils, recipe } from "../../../support/bowlFoils"
import { en } from "../../../support/words"

const limits = { potLifeMin: 45, mostMixG: 40 }
const usual = { potLifeMin: 45, mostMixG: bowlFigures.mostMixG.value }

describe("amounts of one bowl", () => {
  test("worked choice of common practice: 51 g wanted at 1 : 2 is 20 g + 40 g", () => {
    // 51 x 1.05 + 6 = 59.55 g; a third is 19.85 g, 20 g on the scale. 40 g / 1.0204 g/mL = 39.2 mL.
    expect(toMixG(51)).toBeCloseTo(59.55, 10)
    expect(mixAmounts(51, recipe)).toEqual({
      lightenerG: 20,
      developerG: 40,
      developerMl: 39,
      additives: [],
      mixedG: 60,
    })
  })

  test("never under 10 + 20 g", () => {
    expect(mixAmounts(2, recipe)).toMatchObject({ lightenerG: 10, developerG: 20 })
    expect(mixAmounts(2, { ...recipe, ratio: { lightener: 1, developer: 1.5 } })).toMatchObject({
      lightenerG: 12,
      developerG: 18,
    })
    expect(mixAmounts(2, { ...recipe, ratio: { lightener: 2, developer: 5 } })).toMatchObject({
      lightenerG: 10,
      developerG: 25,
    })
  })

  test("powder goes up to the step of the scale, developer follows it", () => {
    // 30 x 1.05 + 6 = 37.5 g at 1 : 1.5: 15 g exactly; 31 g: 38.55 g, 15.42 g.
    const thick = { ...recipe, ratio: { lightener: 1, developer: 1.5 } }
    expect(mixAmounts(30, thick)).toMatchObject({ lightenerG: 15, developerG: 23, mixedG: 38 })
    expect(mixAmounts(31, { ...thick, scaleStepG: 0.5 })).toMatchObject({
      lightenerG: 15.5,
      developerG: 23.5,
    })
    expect(mixAmounts(31, { ...thick, scaleStepG: 0.1 })).toMatchObject({
      lightenerG: 15.5,
      developerG: 23.3,
    })
  })

  test("an additive is a line of its own and displaces developer only if its sheet says so", () => {
    const drops = { name: "Drops", gPerG: 0.1, replacesDeveloper: false }
    const beside = mixAmounts(51, { ...recipe, additives: [drops] })
    expect(beside).toMatchObject({ developerG: 40, additives: [{ name: "Drops", grams: 2 }], mixedG: 62 })
    expect(additivesOf(beside)).toEqual([
      { code: "beside-developer", name: "Drops", grams: 2, restParts: 2.1 },
    ])
    const instead = mixAmounts(51, { ...recipe, additives: [{ ...drops, replacesDeveloper: true }] })
    expect(instead).toMatchObject({ developerG: 38, mixedG: 60 })
    expect(additivesOf(instead)).toEqual([{ code: "instead-of-developer", name: "Drops", grams: 2 }])
  })
})

describe("bowls", () => {
  test("what fits one bowl is one bowl", () => {
    // 8 x 4 = 32 g: 39.6 g to mix, 13.2 g of powder, 14 g on the scale.
    expect(planBowls(bowlFoils(8, 4, 2), recipe, limits)).toMatchObject([
      { atMin: 0, lightenerG: 14, developerG: 28 },
    ])
  })

  test("one bowl serves where it lasts: 40 g for 10 foils in 20 minutes is one of 16 + 32 g, not two of 30", () => {
    // 40 x 1.05 + 6 = 48 g at 1 : 2; two bowls of 20 g would be the smallest mix each, 30 + 30 g.
    expect(planBowls(bowlFoils(10, 4, 2), recipe, usual).map(({ mixedG }) => mixedG)).toEqual([48])
  })

  test("no fresh bowl where one serves, whatever the foils and the scale", () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 6, noNaN: true }), { minLength: 1, maxLength: 12 }),
        fc.constantFrom(0.1, 0.5, 1, 2, 5),
        (grams, scaleStepG) => {
          const foils = placedInTurn(
            grams.map((high, i) => ({
              id: `${i}`,
              productG: { low: high / 2, mid: high / 1.5, high },
              placeMin: 2,
            })),
          )
          const wantedG = grams.reduce((sum, each) => sum + each, 0)
          const isEnough = 1.05 * wantedG + 6 <= usual.mostMixG && 2 * grams.length <= usual.potLifeMin
          if (isEnough) expect(planBowls(foils, { ...recipe, scaleStepG }, usual)).toHaveLength(1)
        },
      ),
    ))

  test("more grams than a bowl: shared so that the least is mixed", () => {
    // 48 g. 8 + 4 foils: 42 + 30 g. 7 + 5: 35.4 and 27 g to mix, 12 + 24 and 10 + 20 g: 66 g; 6 + 6: 33 + 33.
    const bowls = planBowls(bowlFoils(12, 4, 2), recipe, limits)
    expect(bowls).toHaveLength(2)
    expect(bowls[0].mixedG + bowls[1].mixedG).toBe(66)
    expect(bowls[1].atMin).toBe(2 * bowls[0].sections.length)
  })

  test("pot life: 10 foils of 5 minutes are 50 minutes, past 45", () => {
    const bowls = planBowls(bowlFoils(10, 1, 5), recipe, limits)
    expect(bowls).toHaveLength(2)
    for (const { sections } of bowls) expect(sections.length * 5).toBeLessThanOrEqual(45)
    expect(planBowls(bowlFoils(9, 1, 5), recipe, limits)).toHaveLength(1)
  })

  test("no more than 12 foils from one bowl, however small", () => {
    expect(planBowls(bowlFoils(12, 0.5, 1), recipe, limits)).toHaveLength(1)
    expect(planBowls(bowlFoils(13, 0.5, 1), recipe, limits)).toHaveLength(2)
  })

  test("foils of another mix in between take their time: the gap counts against the pot life", () => {
    const [first, last] = bowlFoils(2, 4, 2)
    expect(planBowls([first, { ...last, startMin: 44 }], recipe, limits)).toHaveLength(2)
  })

  test("a foil larger than a bowl has one to itself; no foils, no bowls", () => {
    expect(planBowls(bowlFoils(1, 60, 2), recipe, limits)).toMatchObject([{ lightenerG: 23, developerG: 46 }])
    expect(planBowls([], recipe, limits)).toEqual([])
  })

  test("always: every foil once and in order, enough mixed for the upper figure, none too old", () => {
    const foil = fc.record({
      id: fc.uuid(),
      productG: fc
        .double({ min: 0.5, max: 9, noNaN: true })
        .map((g) => ({ low: g / 2, mid: g * 0.8, high: g })),
      placeMin: fc.double({ min: 0.5, max: 8, noNaN: true }),
    })
    fc.assert(
      fc.property(fc.array(foil, { maxLength: 40 }), (foils) => {
        const placed = placedInTurn(foils)
        const bowls = planBowls(placed, recipe, limits)
        expect(bowls.flatMap(({ sections }) => sections)).toEqual(foils.map(({ id }) => id))
        for (const { wantedG, mixedG, atMin, sections } of bowls) {
          expect(mixedG).toBeGreaterThanOrEqual(wantedG.high * 1.05 + 6 - 1e-6)
          const last = placed.find(({ id }) => id === sections.at(-1))
          if (last && sections.length > 1) expect(last.startMin + last.placeMin - atMin).toBeLessThan(45.001)
        }
      }),
    )
  })
})

describe("the whole mix", () => {
  const choice: MixChoice = {
    sheet: houseProducts[0],
    recipe,
    developerPrice: { amount: 8, forG: 1000 },
  }
  const said = (result: ReturnType<typeof planMix>) =>
    result.ok ? [] : result.problems.map((problem) => say(en.formula.mixing.problem, problem))
  const planned = (foils: readonly BowlFoil[], change: Partial<MixChoice> = {}) =>
    planMix(foils, { ...choice, ...change })

  test("strength on the head, waste and cost", () => {
    const result = planned(bowlFoils(8, 4, 2))
    // 14 + 28 g mixed, 16 to 32 g placed. 14 g at 24 for 500 g, 28 g at 8 for 1000 g.
    expect(result).toMatchObject({
      ok: true,
      mix: {
        onHeadPercent: expect.closeTo(4, 12),
        wantedG: { low: 16, mid: 24, high: 32 },
        mixedG: 42,
        wasteG: { low: 10, mid: 18, high: 26 },
        cost: expect.closeTo(14 * 0.048 + 28 * 0.008, 12),
        notes: [],
      },
    })
  })

  test("without a price there is no cost; without a pot life the usual one is taken and said", () => {
    const result = planned(bowlFoils(8, 4, 2), { sheet: { ...choice.sheet, price: null, potLifeMin: null } })
    expect(result).toMatchObject({
      mix: { cost: null, notes: [{ code: "pot-life-assumed", product: houseProducts[0].name, minutes: 45 }] },
    })
  })

  test("a foil slower than the pot life is named", () => {
    const result = planned(bowlFoils(1, 4, 50))
    expect(result).toMatchObject({
      mix: { notes: [{ code: "foil-outlasts-bowl", foil: "f1", minutes: 45 }] },
    })
  })

  test("a scale of 5 g steps that draws a bowl off its ratio says so; one of 0.1 g keeps to it", () => {
    // The least, 30 g, is 13.33 g of powder at 1 : 1.25: 15 g in steps of 5, with 18.75 g of developer, 20 g.
    const notes = (scaleStepG: number, developer: number) => {
      const result = planned(bowlFoils(1, 12, 2), {
        recipe: { ...recipe, ratio: { lightener: 1, developer }, scaleStepG },
      })
      return result.ok ? result.mix.notes : []
    }
    expect(notes(0.1, 1.25)).toEqual([])
    expect(notes(5, 1.25)).toEqual([
      { code: "off-ratio", scaleStepG: 5, parts: expect.closeTo(4 / 3, 9), wantedParts: 1.25 },
    ])
  })

  test.each<[Partial<Recipe>, RegExp]>([
    [
      { ratio: { lightener: 2, developer: 1 } },
      /more lightener than developer\. Enter lightener first, 1 : 2/,
    ],
    [{ ratio: { lightener: 1, developer: -2 } }, /enter parts above 0/],
    [{ ratio: { lightener: 0, developer: Number.NaN } }, /enter parts above 0/],
    [{ developerPercent: -6 }, /-6 % is no strength/],
    [{ scaleStepG: 0 }, /0 g is no step/],
  ])("%j is refused in one sentence", (change, words) => {
    const result = planned(bowlFoils(2, 4, 2), { recipe: { ...recipe, ...change } })
    expect(said(result)).toEqual([expect.stringMatching(words)])
  })

  test("negative and missing grams are refused by foil", () => {
    const [foil] = bowlFoils(1, 4, 2)
    const result = planned([
      { ...foil, productG: { low: -2, mid: 1, high: 3 } },
      { ...foil, id: "f2", productG: { low: 1, mid: 2, high: Number.NaN } },
      { ...foil, id: "f3", placeMin: -1 },
    ])
    const problems = said(result)
    expect(problems.map((problem) => problem.slice(0, 7))).toEqual(["Foil f1", "Foil f2", "Foil f3"])
    expect(problems.join()).not.toMatch(/NaN|-0/)
  })
})
