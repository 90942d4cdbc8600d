import { expect, it } from "vitest"
import { clipPath } from "../../../geometry/surface/clipPath"
import { surfacePoint } from "../../../geometry/surface/frames"

const placeAt = (index: number) => surfacePoint(index, 0)

it("keeps all that is to be kept", () => {
  expect(clipPath(3, placeAt, () => true).map(([u]) => u)).toEqual([0, 1, 2])
  expect(clipPath(3, placeAt, () => false)).toEqual([])
})

it("ends a run at the very place where it ends, to a two hundred and fifty-sixth of a step", () => {
  const kept = clipPath(6, placeAt, ([u]) => u < 1.3 || u > 3.62).map(([u]) => u)
  const expected = [0, 1, 1.3, 3.62, 4, 5]
  expect(kept).toHaveLength(expected.length)
  kept.forEach((u, i) => {
    expect(Math.abs(u - expected[i])).toBeLessThan(1 / 256)
  })
})
