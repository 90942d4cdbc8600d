import { describe, expect, it, test } from "vitest"
import { bowlFigures } from "../../../../presets/formula/bowlFigures"
import { wideCoverageCm2 } from "../../../../presets/formula/consistency"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { setHair } from "../../../../web/core/edits/plan/setHair"
import { changeSection } from "../../../../web/core/edits/sections/changeSections"
import { figuresOf } from "../../../../web/core/figures/measured"
import { blend } from "../../../../web/core/mixing/blend"
import { type BowlFoil, planBowls } from "../../../../web/core/mixing/bowls"
import { chooseDeveloper, type LiftWish } from "../../../../web/core/mixing/developer"
import { planMix } from "../../../../web/core/mixing/mix"
import type { Recipe } from "../../../../web/core/mixing/mixAmounts"
import { mixRecipe } from "../../../../web/core/mixing/mixRecipe"
import { pouringOf } from "../../../../web/core/mixing/pouring"
import { sheetProblems } from "../../../../web/core/mixing/productSheet"
import { consistencyOf } from "../../../../web/core/mixing/ratio"
import { ratiosWanted } from "../../../../web/core/mixing/ratiosWanted"
import { bowlFoils, recipe } from "../../../support/bowlFoils"
import { done, samplePlan } from "../../../support/samples"

const [powder] = houseProducts

describe("the sheet of a product", () => {
  const codes = (change: Partial<ProductSheet>) =>
    sheetProblems({ ...powder, ...change }).map(({ code }) => code)
  const drops = { name: "Drops", gPerG: 0.1, replacesDeveloper: false }

  test.each<[string, Partial<ProductSheet>, string[]]>([
    ["no ratio at all", { ratio: { low: 0, high: 0 } }, ["no-ratio"]],
    ["a ratio of which one end is missing", { ratio: { low: 0, high: 2 } }, ["ratio-impossible"]],
    ["as much developer as powder", { ratio: { low: 1, high: 1 } }, []],
    ["ten levels, which no hair has", lift(0, 10), ["lift-impossible"]],
    ["nine levels, the whole scale", lift(0, 9), []],
    ["heat as long as the longest time", { heatMin: 45, longestMin: 45 }, []],
    ["heat without a longest time", { heatMin: 50, longestMin: null }, []],
    ["a longest time without heat", { heatMin: null, longestMin: 45 }, []],
    ["an additive without a name", { additives: [{ ...drops, name: " " }] }, ["additive-no-name"]],
    ["a price below nothing", { price: { amount: -1, forG: 500 } }, ["price-impossible"]],
    ["no end of a price", { price: { amount: Number.POSITIVE_INFINITY, forG: 500 } }, ["price-impossible"]],
    ["a sample that cost nothing", { price: { amount: 0, forG: 500 } }, []],
  ])("%s", (_, change, problems) => {
    expect(codes(change)).toEqual(problems)
  })

  it("names the additive that is wrong without the blanks around it", () => {
    expect(sheetProblems({ ...powder, additives: [{ ...drops, name: " Drops ", gPerG: 2 }] })).toEqual([
      { code: "additive-grams", name: "Drops", gPerG: 2 },
    ])
  })

  it("compares developers by their strength, however they are listed and whether each states its lift", () => {
    const developers = [
      { volume: 30, levels: { low: 1, high: 2 } },
      { volume: 40, levels: null },
      { volume: 20, levels: { low: 3, high: 4 } },
    ]
    expect(sheetProblems({ ...powder, developers })).toEqual([
      { code: "lift-falls", volume: 30, weakerVolume: 20 },
    ])
  })
})

function lift(low: number, high: number): Partial<ProductSheet> {
  return { developers: [{ volume: 20, levels: { low, high } }] }
}

describe("what is proposed of a sheet", () => {
  const asked: LiftWish = {
    fromLevel: 6,
    liftToLevel: 9,
    hairline: false,
    fine: false,
    porous: false,
    lightened: false,
  }
  it("is the weakest, however the sheet lists them, and why", () => {
    const developers = powder.developers.toReversed()
    expect(chooseDeveloper({ ...powder, developers }, asked)).toEqual({
      kind: "chosen",
      volume: 20,
      levels: { low: 3, high: 4 },
      why: { code: "lift-printed", liftLevels: 3, volume: 20, printed: { low: 3, high: 4 } },
      weaker: null,
    })
  })
  it("passes over a developer whose lift nobody states", () => {
    const developers = [{ volume: 10, levels: null }, ...powder.developers.slice(1)]
    expect(chooseDeveloper({ ...powder, developers }, asked)).toMatchObject({ volume: 20 })
  })
  it("is none where nothing on it may be used: 40 vol alone, or what lifts by nothing", () => {
    const none = { kind: "none", why: { code: "no-lift-allowed", product: powder.name } }
    const strong = [{ volume: 40, levels: { low: 7, high: 9 } }]
    expect(chooseDeveloper({ ...powder, developers: strong }, asked)).toEqual(none)
    const idle = [{ volume: 10, levels: { low: 0, high: 0 } }]
    expect(chooseDeveloper({ ...powder, developers: idle }, asked)).toEqual(none)
  })
  it("is none where nothing is expected of any developer in as many visits as are ever laid out", () => {
    expect(chooseDeveloper(powder, asked, () => false)).toMatchObject({
      kind: "none",
      why: { code: "no-lift-allowed" },
    })
  })
  it("goes to six visits, and no further: a level each with 10 vol", () => {
    const developers = [{ volume: 10, levels: { low: 1, high: 1 } }]
    const inLevels = (levels: number) =>
      chooseDeveloper({ ...powder, developers }, { ...asked, fromLevel: 10 - levels, liftToLevel: 10 })
    expect(inLevels(6)).toMatchObject({ kind: "stages", why: { visits: 6 } })
    expect(inLevels(7)).toMatchObject({ kind: "none" })
  })
})

describe("a mix", () => {
  const codes = (foils: readonly BowlFoil[], change: Partial<Recipe> = {}) => {
    const result = planMix(foils, { sheet: powder, recipe: { ...recipe, ...change }, developerPrice: null })
    return result.ok ? result.mix.notes.map(({ code }) => code) : result.problems.map(({ code }) => code)
  }
  test.each<[string, Partial<Recipe>, string[]]>([
    ["no powder", { ratio: { lightener: 0, developer: 2 } }, ["ratio-parts"]],
    ["no developer", { ratio: { lightener: 1, developer: 0 } }, ["ratio-parts"]],
    ["as much powder as developer", { ratio: { lightener: 2, developer: 2 } }, []],
    ["parts without end", { ratio: { lightener: 1, developer: Number.POSITIVE_INFINITY } }, ["ratio-parts"]],
    ["no peroxide", { developerPercent: 0 }, []],
    ["all of it peroxide", { developerPercent: 100 }, []],
    ["more than all of it", { developerPercent: 101 }, ["no-strength"]],
    ["the coarsest scale", { scaleStepG: 10 }, []],
    ["one coarser", { scaleStepG: 11 }, ["scale-step"]],
  ])("of %s", (_, change, expected) => {
    expect(codes(bowlFoils(1, 80, 2), change)).toEqual(expected)
  })

  const [foil] = bowlFoils(1, 4, 2)
  test.each<[string, Partial<BowlFoil>, string[]]>([
    ["nothing", { productG: { low: 0, mid: 0, high: 0 } }, []],
    ["a lower figure above the middle one", { productG: { low: 3, mid: 2, high: 4 } }, ["foil-grams"]],
    ["a middle figure above the upper one", { productG: { low: 1, mid: 5, high: 4 } }, ["foil-grams"]],
    ["no minutes", { placeMin: 0 }, []],
    ["just the pot life", { placeMin: 45 }, []],
    ["more than the pot life", { placeMin: 46 }, ["foil-outlasts-bowl"]],
  ])("for a foil of %s", (_, change, expected) => {
    expect(codes([{ ...foil, ...change }])).toEqual(expected)
  })

  it("tells how far the scale draws the worst bowl off, by parts to one of powder", () => {
    // 2 : 5 is 1 : 2.5, which 10 + 25 g keep to; nothing to say.
    expect(codes(bowlFoils(1, 4, 2), { ratio: { lightener: 2, developer: 5 } })).toEqual([])
  })
  it("counts what replaces developer as developer", () => {
    // A tenth of the powder's grams stand in the developer's place: 20 g powder, 38 g and 2 g are still 1 : 2.
    const instead = [{ name: "Drops", gPerG: 0.1, replacesDeveloper: true }]
    expect(codes(bowlFoils(1, 51, 2), { additives: instead })).toEqual([])
    const third = [{ name: "Drops", gPerG: 0.3, replacesDeveloper: true }]
    expect(codes(bowlFoils(1, 51, 2), { additives: third })).toEqual([])
    expect(codes(bowlFoils(1, 51, 2), { additives: [{ ...third[0], replacesDeveloper: false }] })).toEqual([])
  })
})

describe("how bowls are shared", () => {
  const most = (mostMixG: number, potLifeMin = 45) => ({ mostMixG, potLifeMin })
  it("takes as few as mix the least: 60 + 0 g is not parted, and a bowl may hold just the most", () => {
    // 4 x 8 = 32 g want 32 x 1.05 + 6 = 39.6 g.
    expect(planBowls(bowlFoils(4, 8, 2), recipe, most(39.6))).toHaveLength(1)
    expect(planBowls(bowlFoils(4, 8, 2), recipe, most(39.5))).toHaveLength(2)
  })
  it("may be just as old as the pot life: 9 foils of 5 minutes are 45", () => {
    expect(planBowls(bowlFoils(9, 1, 5), recipe, most(60))).toHaveLength(1)
    expect(planBowls(bowlFoils(9, 1, 5), recipe, most(60, 44.9))).toHaveLength(2)
  })
  it("starts a fresh one at a foil that is to start one, and nowhere else", () => {
    const foils = bowlFoils(4, 2, 2).map((foil, i) => ({ ...foil, ...(i === 2 && { startsBowl: true }) }))
    expect(planBowls(foils, recipe, most(60)).map(({ sections }) => sections)).toEqual([
      ["f1", "f2"],
      ["f3", "f4"],
    ])
    const first = bowlFoils(3, 2, 2).map((foil, i) => ({ ...foil, ...(i === 0 && { startsBowl: true }) }))
    expect(planBowls(first, recipe, most(60))).toHaveLength(1)
  })
})

describe("a developer that is poured", () => {
  it("is not where it stands on the shelf", () => {
    expect(pouringOf(20, [10, 20], 40)).toBeNull()
  })
  it("is two bottles that come to the whole", () => {
    // 15 vol of 10 and 30: three parts of 10 to one of 30 by volumes; to the tenth of a gram they are 40 g.
    const poured = pouringOf(15, [10, 30], 40)
    if (poured?.code !== "poured") throw new Error("not poured")
    expect(poured.bottles.map(({ volume }) => volume).toSorted()).toEqual([10, 30])
    expect(poured.bottles.reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(40, 9)
  })
  it("says why it cannot be: 40 vol of weaker bottles", () => {
    expect(pouringOf(40, [10, 20], 40)).toMatchObject({
      code: "not-poured",
      volume: 40,
      problem: { code: "want-too-strong" },
    })
  })
  it("is refused where there is no bottle at all, and only by that", () => {
    expect(blend([], 6, 40)).toEqual({ problems: [{ code: "no-bottles" }] })
  })
})

describe("what the foils of a plan ask of a mix", () => {
  it("is the salon's scale and what is stirred in of the sheet's additives", () => {
    const mix = samplePlan.mixes[0]
    const drops = { name: "Drops", gPerG: 0.1, replacesDeveloper: false }
    const sheet = { ...powder, additives: [drops, { ...drops, name: "Bond" }] }
    expect(mixRecipe({ ...mix, additives: ["Bond"] }, sheet, {}).additives).toEqual([sheet.additives[1]])
    expect(mixRecipe(mix, sheet, {}).additives).toEqual([])
    expect(mixRecipe(mix, null, {})).toMatchObject({
      ratio: mix.ratio,
      additives: [],
      scaleStepG: bowlFigures.scaleStepG.value,
    })
  })

  it("is a ratio for each way of working, the most wanted first, and none without a sheet", () => {
    // A slice, a weave and a backcombed section, which wants it thick; left-out hair wants nothing.
    const [mix] = samplePlan.mixes
    const wanted = ratiosWanted(mix, samplePlan)
    expect(wanted.reduce((sum, { foils }) => sum + foils, 0)).toBe(3)
    expect(wanted.map(({ foils }) => foils)).toEqual(
      wanted.map(({ foils }) => foils).toSorted((a, b) => b - a),
    )
    expect(wanted.find(({ consistency }) => consistency === "thick")).toMatchObject({ foils: 1, parts: 1.5 })
    expect(ratiosWanted({ ...mix, id: "Z" }, samplePlan)).toEqual([])
    expect(ratiosWanted({ ...mix, product: "Nobody’s" }, samplePlan)).toEqual([])
  })

  it("is loose where a foil has much hair to cover, and creamy below", () => {
    const long = done(setHair({ lengthCm: { front: 95, sides: 95, back: 95 } }))
    const wide = done(changeSection("s1", { band: { depthMm: { start: 40, end: 40 } } }), long)
    const areaOf = (plan: typeof wide) => figuresOf(plan.sections[0], plan).strandAreaCm2
    expect(areaOf(wide)).toBeGreaterThan(wideCoverageCm2.value)
    const narrow = done(changeSection("s1", { band: { depthMm: { start: 1, end: 1 } } }))
    expect(areaOf(narrow)).toBeLessThan(wideCoverageCm2.value)
    const [first, second] = [wide, narrow].map((plan) => {
      const foil = plan.sections[0]
      return foil.kind === "left-out" ? null : consistencyOf(foil, plan)
    })
    expect([first, second]).toEqual(["loose", "creamy"])
  })
})
