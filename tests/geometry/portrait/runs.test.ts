import { describe, expect, it } from "vitest"
import { runsOf, stretch, withoutShort } from "../../../geometry/portrait/runs"

describe("runs of equal neighbours", () => {
  it("end at the list's ends when it is open", () => {
    expect(runsOf([1, 1, 2, 1], false)).toEqual([
      { from: 0, to: 1, value: 1 },
      { from: 2, to: 2, value: 2 },
      { from: 3, to: 3, value: 1 },
    ])
  })

  it("go on over the seam when it is closed", () => {
    const runs = runsOf([1, 1, 2, 1], true)
    expect(runs).toEqual([
      { from: 2, to: 2, value: 2 },
      { from: 3, to: 5, value: 1 },
    ])
    expect(stretch(["a", "b", "c", "d"], runs[1])).toEqual(["d", "a", "b"])
  })

  it("are one run when nothing changes", () => {
    expect(runsOf([7, 7, 7], true)).toEqual([{ from: 0, to: 2, value: 7 }])
  })
})

describe("short runs", () => {
  it("take the value before them", () => {
    const [o, x] = [false, true]
    const bridged = withoutShort([x, x, o, x, o, o, o, x], { value: false, least: 2, isClosed: true })
    expect(bridged).toEqual([x, x, x, x, o, o, o, x])
  })

  it("at the start of an open list take the value after them", () => {
    expect(withoutShort([1, 2, 2, 2], { value: 1, least: 2, isClosed: false })).toEqual([2, 2, 2, 2])
  })
})
