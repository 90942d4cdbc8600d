import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { type Blend, blend, blendShares, bottlesFor, strengthOf } from "../../../../web/core/mixing/blend"
import { say } from "../../../../web/words/say"
import { en } from "../../../support/words"

const gramsOf = (result: Blend) => ("parts" in result ? result.parts.map(({ grams }) => grams) : result)
const problemsOf = (result: Blend) => ("problems" in result ? result.problems : [])

describe("published alligation exercises", () => {
  test("a: 300 mL of 70 % and water to 40 % takes 225 mL (US Army MD0802, Pharmaceutical Calculations, 2-13)", () => {
    const [strong, water] = blendShares([70, 0], 40)
    expect((300 * water.share) / strong.share).toBeCloseTo(225, 10)
  })

  test("b: 500 mL of 1 : 200 to 1 : 4000 takes 9500 mL of water (MD0802, p. 2-37)", () => {
    const [solution, water] = blendShares([100 / 200, 0], 100 / 4000)
    expect((500 * water.share) / solution.share).toBeCloseTo(9500, 8)
  })

  test("c: 75 % and 10 % to 45 %, 1000 mL: 35 and 30 parts of 65 (MD0802, p. 2-37)", () => {
    const [strong, weak] = gramsOf(blend([75, 10], 45, 1000)) as number[]
    expect(strong).toBeCloseTo((1000 * 35) / 65, 10)
    expect(strong).toBeCloseTo(538.46, 2)
    expect(weak).toBeCloseTo(461.54, 2)
  })

  test.each([
    ["d: pharmacy exercise sheet", [2, 7], 3.5, 1000, [700, 300]],
    ["e: University of Houston pharmacy module, 1 : 1 : 10", [50, 20, 5], 10, 120, [10, 10, 100]],
    ["h: technician course", [3, 1], 2, 250, [125, 125]],
    ["i: study page", [12, 2], 4, 3000, [600, 2400]],
    ["j: study page, 25 mg/mL is 2.5 %", [2.5, 0], 1, 200, [80, 120]],
    // (7.5 - 6) / (12 - 6) = 1/4; (6 - 3) / (9 - 3) = 1/2; (7 - 6) / (9 - 6) = 1/3
    ["k: by hand", [12, 6], 7.5, 120, [30, 90]],
    ["l: by hand", [9, 3], 6, 80, [40, 40]],
    ["m: by hand", [9, 6], 7, 75, [25, 50]],
    ["12 and 3 to 6, 90 g: 3/9 of the strong", [12, 3], 6, 90, [30, 60]],
  ])("%s: %j to %d per cent, %d g", (_source, have, want, grams, expected) => {
    const found = gramsOf(blend(have, want, grams)) as number[]
    expect(found).toHaveLength(expected.length)
    found.forEach((part, i) => {
      expect(part).toBeCloseTo(expected[i], 9)
    })
  })

  test("f: pure powder into 480 g of 20 % to 31 % takes 76.52 g (pharmacy practice site)", () => {
    const [powder, solution] = blendShares([100, 20], 31)
    expect((480 * powder.share) / solution.share).toBeCloseTo(76.52, 2)
  })

  test("g: 3000 of 40 %, 1000 of 60 % and 1000 of 70 % is 50 % (pharmacy exercise sheet)", () => {
    const parts = [
      { percent: 40, grams: 3000 },
      { percent: 60, grams: 1000 },
      { percent: 70, grams: 1000 },
    ]
    expect(strengthOf(parts)).toBeCloseTo(50, 12)
  })
})

describe("n: what cannot be reached is refused, with a cure", () => {
  test("too weak and too strong", () => {
    expect(problemsOf(blend([9, 6], 3, 60))).toEqual([
      { code: "want-too-weak", wantPercent: 3, weakestPercent: 6 },
    ])
    expect(problemsOf(blend([3, 6], 7.5, 60))).toEqual([
      { code: "want-too-strong", wantPercent: 7.5, strongestPercent: 6 },
    ])
  })

  test("nonsense is named field by field", () => {
    const problems = problemsOf(blend([12, -3, Number.NaN], 200, -0))
    expect(problems.map(({ code }) => code)).toEqual([
      "bottle-percent",
      "bottle-percent",
      "want-percent",
      "no-amount",
    ])
    expect(problems.map((problem) => say(en.formula.mixing.blend, problem)).join(" ")).not.toMatch(/NaN|-0/)
    expect(problemsOf(blend([], 6, 60))).toHaveLength(1)
    expect(problemsOf(blend([12, 3], 6, Number.POSITIVE_INFINITY))).toHaveLength(1)
  })
})

describe("any bottles", () => {
  const percents = fc.double({ min: 0, max: 40, noNaN: true })

  test("the parts are the amount and the strength asked for, none negative", () => {
    fc.assert(
      fc.property(
        fc.array(percents, { minLength: 2, maxLength: 5 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (have, between) => {
          const want = Math.min(...have) + between * (Math.max(...have) - Math.min(...have))
          const result = blend(have, want, 90)
          if (!("parts" in result)) throw new Error(result.problems.map(({ code }) => code).join(" "))
          const total = result.parts.reduce((sum, { grams }) => sum + grams, 0)
          expect(total).toBeCloseTo(90, 9)
          expect(strengthOf(result.parts)).toBeCloseTo(want, 9)
          expect(result.parts.every(({ grams }) => grams >= 0)).toBe(true)
        },
      ),
    )
  })

  test("a bottle that is right is poured alone, the same bottle twice counts once", () => {
    expect(blend([12, 6, 3], 6, 40)).toEqual({ parts: [{ percent: 6, grams: 40 }] })
    expect(gramsOf(blend([12, 12, 3], 6, 90))).toHaveLength(2)
  })

  test("from a shelf: the right bottle, else the nearest either side, else none", () => {
    expect(bottlesFor([12, 9, 6, 3], 6)).toEqual([6])
    expect(bottlesFor([12, 9, 6, 3], 7.5)).toEqual([9, 6])
    expect(bottlesFor([12, 9], 6)).toBeNull()
  })
})
