import { describe, expect, it } from "vitest"
import { returnDates } from "../../../../web/core/record/returnDates"

// By hand, on the calendar of 2026: toner 4 to 6 weeks, frame 8 to 12 (common practice, no source), the alert test 48 h
// before the earliest of them (National Hair and Beauty Federation; FDA: two days).
describe("when a client comes back", () => {
  it("is 4 to 6 weeks for the toner and 8 to 12 for the frame, over the ends of months", () => {
    expect(returnDates("2026-03-09", true)).toEqual({
      toner: { from: "2026-04-06", to: "2026-04-20" },
      frame: { from: "2026-05-04", to: "2026-06-01" },
      testBy: "2026-04-04",
    })
  })
  it("is for the frame alone where nothing was toned, over the end of a year and a leap day", () => {
    expect(returnDates("2027-12-20", false)).toEqual({
      toner: null,
      frame: { from: "2028-02-14", to: "2028-03-13" },
      testBy: "2028-02-12",
    })
  })
})
