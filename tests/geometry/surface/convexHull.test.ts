import { describe, expect, it } from "vitest"
import { convexHull } from "../../../geometry/surface/convexHull"

describe("the convex hull", () => {
  it("bridges a notch", () => {
    // A 6 by 4 box with a V cut into its top; the hull is the box again.
    const notched = [
      [0, 0],
      [6, 0],
      [6, 4],
      [3, 1],
      [0, 4],
    ] as const
    expect(convexHull(notched)).toEqual([
      [0, 0],
      [6, 0],
      [6, 4],
      [0, 4],
    ])
  })

  it("leaves out points on a side", () => {
    expect(
      convexHull([
        [0, 0],
        [1, 0],
        [3, 0],
        [0, 4],
      ]),
    ).toHaveLength(3)
  })
})
