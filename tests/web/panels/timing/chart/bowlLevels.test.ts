import { expect, it } from "vitest"
import { bowlLevels } from "../../../../../web/panels/timing/chart/bowlLevels"

it("keeps bowls that are far apart on the lowest line", () => {
  expect(bowlLevels([64, 98, 240])).toEqual([0, 0, 0])
})

it("lifts a bowl that would stand on the letter before it, in any order", () => {
  expect(bowlLevels([80, 92])).toEqual([0, 1])
  expect(bowlLevels([92, 80])).toEqual([1, 0])
})

it("puts three at one minute on three lines, and the next where there is room soonest", () => {
  expect(bowlLevels([100, 100, 100, 130, 134])).toEqual([0, 1, 2, 0, 1])
})
