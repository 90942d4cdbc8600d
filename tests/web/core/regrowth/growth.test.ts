import { describe, expect, it } from "vitest"
import { addGrowth, growthIn, growthMeasured, weeksBetween } from "../../../../web/core/regrowth/growth"
import { beginsAt, stateOf } from "../../../../web/core/regrowth/sectionStates"

describe("what has grown since", () => {
  it("is 27.7 mm in 10 weeks at 12 mm a month, and a start of 20 mm is 47.7 mm off by then", () => {
    // 10 weeks are 10/52 of 12 months: 2.3077 months at 12 mm.
    const growth = growthIn(10, { value: 12, range: [12, 12], source: "by hand" })
    expect(growth.midMm).toBeCloseTo(27.69, 2)
    expect(beginsAt(20, growth).midMm).toBeCloseTo(47.69, 2)
    expect(stateOf(20, growth)).toBe("due")
  })

  it("has the range that nobody's hair has been measured for: 10 to 14 mm a month", () => {
    // 2.3077 months.
    const { lowMm, midMm, highMm } = growthIn(10)
    expect([lowMm, midMm, highMm].map((mm) => Math.round(mm * 10) / 10)).toEqual([23.1, 27.7, 32.3])
    expect(growthIn(0)).toEqual({ lowMm: 0, midMm: 0, highMm: 0 })
  })

  it("is what was measured, where it was, and adds up over visits", () => {
    expect(growthMeasured(21)).toEqual({ lowMm: 21, midMm: 21, highMm: 21 })
    expect(addGrowth(growthMeasured(21), { lowMm: 1, midMm: 2, highMm: 3 })).toEqual({
      lowMm: 22,
      midMm: 23,
      highMm: 24,
    })
  })

  it("counts weeks over a change of the clocks, and none where the clock was set back", () => {
    expect(weeksBetween("2026-03-02", "2026-05-11")).toBe(10)
    expect(weeksBetween("2026-05-11", "2026-03-02")).toBe(0)
  })
})

describe("how an old foil stands", () => {
  it.each([
    // 10 weeks: 23.1 mm at the least.
    [3, 10, "due"],
    [23, 10, "due"],
    // 27.7 is likely longer than 25; at the least it is not.
    [25, 10, "soft"],
    [40, 10, "soft"],
    // 4 weeks: 9.2 mm at the least.
    [3, 4, "too-early"],
    [40, 4, "too-early"],
    // 5 weeks: 11.5 mm at the least.
    [11, 5, "due"],
    [12, 5, "soft"],
  ] as const)("with a start of %d mm after %d weeks: %s", (start, weeks, state) => {
    expect(stateOf(start, growthIn(weeks))).toBe(state)
  })
})
