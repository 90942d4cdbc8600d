import { expect, it } from "vitest"
import { crossesItself } from "../../../geometry/surface/crossesItself"
import { surfacePoint } from "../../../geometry/surface/frames"

const path = (...points: [number, number][]) => points.map(([u, v]) => surfacePoint(u, v))

it("sees a loop and lets a bend, a hairpin and a closed line pass", () => {
  expect(crossesItself(path([0, 0], [4, 0], [4, 3], [1, -2]))).toBe(true)
  expect(crossesItself(path([0, 0], [4, 0], [4, 3], [1, 2]))).toBe(false)
  expect(crossesItself(path([0, 0], [4, 0], [0, 0.1]))).toBe(false)
  expect(crossesItself(path([0, 0], [4, 0], [4, 3], [0, 0]))).toBe(false)
})
