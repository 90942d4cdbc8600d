import { expect, it } from "vitest"
import { mixGrams } from "../../../web/plan/mixGrams"

it("weighs lightener to the next whole gram and developer by the ratio", () => {
  // 95 g in 3 parts is 31.67 g a part.
  expect(mixGrams(95, { lightener: 1, developer: 2 })).toEqual({ lightenerG: 32, developerG: 64 })
  // 41 g in 2.5 parts is 16.4 g a part; 17 g takes 25.5 g.
  expect(mixGrams(41, { lightener: 1, developer: 1.5 })).toEqual({ lightenerG: 17, developerG: 26 })
})

it("adds no gram to a whole one", () => {
  expect(mixGrams(0.1 + 0.2 + 29.7, { lightener: 1, developer: 2 })).toEqual({
    lightenerG: 10,
    developerG: 20,
  })
})

it("mixes nothing where nothing is wanted", () => {
  expect(mixGrams(0, { lightener: 1, developer: 3 })).toEqual({ lightenerG: 0, developerG: 0 })
})
