import { describe, expect, it } from "vitest"
import { smoothThrough } from "../../../geometry/surface/smoothThrough"

describe("a smooth line", () => {
  it("passes through its points and ends at the last", () => {
    const line = smoothThrough(
      [
        [0, 0],
        [6, 2],
        [9, 7],
      ],
      1,
    )
    expect(line[0]).toEqual([0, 0])
    expect(line).toContainEqual([6, 2])
    expect(line.at(-1)).toEqual([9, 7])
  })

  it("stays straight between points of a straight line, a step apart", () => {
    const line = smoothThrough(
      [
        [0, 1],
        [4, 3],
        [8, 5],
      ],
      2,
    )
    for (const [x, y] of line) expect(y).toBeCloseTo(1 + x / 2, 12)
    // Each span is 4.47 mm long: two pieces.
    expect(line).toHaveLength(5)
  })
})
