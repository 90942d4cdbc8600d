import { expect, it } from "vitest"
import { grownMm } from "../../../../web/core/fall/growth"

it("is 10 to 14 mm a month: over ten weeks 23 to 32 mm, none on the day", () => {
  expect(grownMm(0)).toEqual({ low: 0, mid: 0, high: 0 })
  const { low, mid, high } = grownMm(10)
  // 70 days are 2.2996 months of 30.44 days.
  expect(low).toBeCloseTo(22.996, 2)
  expect(mid).toBeCloseTo(27.595, 2)
  expect(high).toBeCloseTo(32.194, 2)
})
