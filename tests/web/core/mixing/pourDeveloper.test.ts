import { expect, test } from "vitest"
import { pourDeveloper } from "../../../../web/core/mixing/pourDeveloper"
import { pouringOf } from "../../../../web/core/mixing/pouring"

test("12 % and 3 % make 90 g of 6 %: 30 g and 60 g", () => {
  // Alligation by hand: (6 - 3) : (12 - 6) = 1 : 2. 40, 20 and 10 vol are 12, 6 and 3 %.
  expect(pourDeveloper(20, [10, 40], 90)).toEqual({
    parts: [
      { percent: 12, grams: 30 },
      { percent: 3, grams: 60 },
    ],
  })
})

test("a bottle that stands on the shelf is poured as it is; an unknown shelf says nothing", () => {
  expect(pourDeveloper(20, [20, 40], 90)).toBeNull()
  expect(pourDeveloper(20, [], 90)).toBeNull()
})

test("what cannot be reached is refused with the nearest bottle", () => {
  expect(pourDeveloper(30, [10, 20], 60)).toMatchObject({
    problems: [{ code: "want-too-strong", strongestPercent: 6 }],
  })
})

test("the two weighings are the developer to the tenth of a gram, however they round", () => {
  // 20.1 g of 6 % from 12 and 3 %: 6.7 + 13.4; of 25.5 g 8.5 + 17.
  for (const grams of [20, 20.1, 25.5, 61.3]) {
    const poured = pouringOf(20, [10, 40], grams)
    const said =
      poured?.code === "poured" ? poured.bottles.map((bottle) => Number(bottle.grams.toFixed(1))) : []
    expect(said).toHaveLength(2)
    expect(said[0] + said[1]).toBeCloseTo(Math.round(10 * grams) / 10, 9)
  }
})
