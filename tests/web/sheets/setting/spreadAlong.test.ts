import { describe, expect, it } from "vitest"
import { spreadAlong } from "../../../../web/sheets/setting/spreadAlong"

describe("labels spread along a line", () => {
  it("leaves them where they wish to be when there is room", () => {
    expect(spreadAlong([10, 31], [8, 8], [0, 60])).toEqual([10, 31])
  })

  it("pushes each past the one before it", () => {
    expect(spreadAlong([2, 3, 5], [10, 6, 4], [0, 60])).toEqual([5, 13, 18])
  })

  it("pushes the row back inside its end", () => {
    expect(spreadAlong([40, 57, 59], [10, 6, 4], [0, 60])).toEqual([40, 53, 58])
  })
})
