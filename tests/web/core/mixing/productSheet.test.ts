import { describe, expect, test } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import type { ProductSheet } from "../../../../presets/formula/productSheet"
import { sheetProblems } from "../../../../web/core/mixing/productSheet"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

const [powder] = houseProducts
const wrong = (change: Partial<ProductSheet>) =>
  sheetProblems({ ...powder, ...change }).map((problem) => say(en.formula.productSheets.problem, problem))

test("every house product is in order, named as invented, and its own", () => {
  for (const sheet of houseProducts) {
    expect(sheetProblems(sheet)).toEqual([])
    expect(sheet.name).toMatch(/\(invented\)$/)
  }
  expect(new Set(houseProducts.map(({ id }) => id)).size).toBe(houseProducts.length)
})

test("gaps are no problem", () => {
  const gaps = {
    longestMin: null,
    heatMin: null,
    onScalp: null,
    potLifeMin: null,
    price: null,
    alertTest: null,
  }
  expect(wrong({ ...gaps, developers: [{ volume: 20, levels: null }] })).toEqual([])
})

test("a toner without developer needs none listed", () => {
  const sheet = { ...houseProducts[3], kind: "direct-toner" as const, developers: [] }
  expect(sheetProblems(sheet)).toEqual([])
})

describe("each slip has one sentence with its cure", () => {
  test.each<[Partial<ProductSheet>, RegExp]>([
    [{ name: " " }, /^Name: .*Enter what is on the tub/],
    [
      { ratio: { low: 0.5, high: 0.5 } },
      /^Ratio: .*more product than developer\. If the tub says 1 : 2, enter 2\.$/,
    ],
    [{ ratio: { low: 2.5, high: 1.5 } }, /^Ratio: .*runs backwards.*1.5 to 2.5/],
    [{ ratio: { low: -1, high: 2 } }, /^Ratio: .*parts of developer to 1/],
    [{ ratio: { low: 1, high: Number.NaN } }, /^Ratio: .*no mixing ratio/],
    [{ developers: [] }, /^Developers: none entered\. Add/],
    [{ developers: [{ volume: 60, levels: null }] }, /60 vol is no developer\. Enter 1 to 40/],
    [{ developers: [{ volume: 20, levels: { low: 4, high: 3 } }] }, /^Developers: 4 to 3 levels for 20 vol/],
    [{ longestMin: -5 }, /^Maximum time: -5 minutes cannot be\. Enter 1 to 120, or leave it empty/],
    [{ potLifeMin: 0 }, /^Pot life: 0 minutes/],
    [{ heatMin: 50, longestMin: 45 }, /^Heat: longer than the maximum time/],
    [
      { additives: [{ name: "Drops", gPerG: -0.1, replacesDeveloper: false }] },
      /^Additives: -0.1 g of Drops/,
    ],
    [{ price: { amount: 10, forG: 0 } }, /^Price/],
  ])("%j", (change, words) => {
    const problems = wrong(change)
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatch(words)
    expect(problems[0]).not.toMatch(/NaN|-0(?!\.)/)
  })

  test("the same developer twice, and a stronger one that lifts less", () => {
    const twice = { volume: 20, levels: { low: 3, high: 4 } }
    expect(wrong({ developers: [twice, twice] })).toEqual([
      expect.stringMatching(/20 vol stands there twice/),
    ])
    expect(wrong({ developers: [twice, { volume: 30, levels: { low: 1, high: 2 } }] })).toEqual([
      expect.stringMatching(/30 vol lifts less than 20 vol/),
    ])
  })
})
