import { expect, test } from "vitest"
import { pourDeveloper } from "../../../web/service/pourDeveloper"

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
    problems: [expect.stringContaining("stronger than the strongest bottle, 6 %")],
  })
})
