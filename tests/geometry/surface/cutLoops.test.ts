import { expect, it } from "vitest"
import { cutLoops } from "../../../geometry/surface/cutLoops"
import { surfacePoint } from "../../../geometry/surface/frames"

const line = (...places: readonly (readonly [number, number])[]) => places.map(([u, v]) => surfacePoint(u, v))

it("leaves a line without a loop as it is", () => {
  const zigzag = line([0, 0], [1, 1], [2, 0], [3, 1])
  expect(cutLoops(zigzag)).toEqual(zigzag)
})

it("goes on from where the line meets itself", () => {
  // Up the left, over and back down across the first piece: they meet at (0, 0.5).
  const loop = line([0, 0], [0, 1], [0.5, 1], [0.5, 0.5], [-1, 0.5], [-2, 0])
  expect(cutLoops(loop)).toEqual(line([0, 0], [0, 0.5], [-1, 0.5], [-2, 0]))
})
