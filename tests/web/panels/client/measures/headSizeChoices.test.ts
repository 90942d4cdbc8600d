import { describe, expect, it } from "vitest"
import { fitAxes } from "../../../../../geometry/scalp/fit"
import { headSurface } from "../../../../../geometry/scalp/headSurface"
import { headFigures, startingHeadSize } from "../../../../../presets/client/headSizes"
import { newPlan } from "../../../../../web/core/document/newPlan"
import { isAverage, toCaliper, toTape } from "../../../../../web/panels/client/measures/headSizeChoices"

const surfaceOf = (size: Parameters<typeof fitAxes>[0]) => headSurface(fitAxes(size, headFigures))

describe("turning one way of measuring into the other", () => {
  it("keeps the head: each axis within a hundredth, the roundings of three measures", () => {
    const size = { kind: "caliper", lengthMm: 192, breadthMm: 149, heightMm: 127 } as const
    const axes = fitAxes(size, headFigures)
    fitAxes(toTape(surfaceOf(size)), headFigures).forEach((axis, i) => {
      expect(Math.abs(axis / axes[i] - 1)).toBeLessThan(0.01)
    })
  })
  it("gives a caliper's readings back", () => {
    const size = { kind: "caliper", lengthMm: 192, breadthMm: 149, heightMm: 127 } as const
    expect(toCaliper(surfaceOf(size))).toEqual(size)
  })
})

it("knows an average head from a measured one", () => {
  expect(isAverage(newPlan(new Date()).head.size)).toBe(true)
  expect(isAverage(startingHeadSize)).toBe(true)
  expect(isAverage(toTape(surfaceOf(startingHeadSize)))).toBe(false)
})
