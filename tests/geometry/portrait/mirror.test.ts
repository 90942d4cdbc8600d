import { describe, expect, it } from "vitest"
import { isSymmetricView, mirroredView, symmetricLines } from "../../../geometry/portrait/mirror"
import { viewPoint } from "../../../geometry/surface/frames"
import { cross, subtract, type Vec3 } from "../../../geometry/surface/vec3"
import { fixedViews, project, turnedView } from "../../../geometry/surface/views"

const line = (...path: [number, number][]) => ({
  part: "outline" as const,
  weight: "bold" as const,
  path: path.map(([x, y]) => viewPoint(x, y)),
})

describe("the view from the other side", () => {
  it("shows a mirrored point at the mirrored place of the page", () => {
    const view = turnedView(-0.6, 0.25)
    const [x, y] = project(view, [31, 70, 12])
    expect(project(mirroredView(view), [-31, 70, 12])).toEqual([-x, y])
  })

  it("is a view: its axes are right-handed", () => {
    const { right, up, toward } = mirroredView(turnedView(-0.6, 0.25))
    const off: Vec3 = subtract(cross(right, up), toward)
    expect(Math.hypot(...off)).toBeCloseTo(0, 12)
  })

  it("turns left into right", () => {
    expect(mirroredView(fixedViews.left).toward).toEqual(fixedViews.right.toward)
    expect(isSymmetricView(fixedViews.top)).toBe(true)
    expect(isSymmetricView(fixedViews.left)).toBe(false)
  })
})

describe("lines made symmetric", () => {
  it("are doubled when they do not reach the middle", () => {
    expect(symmetricLines([line([1, 0], [3, 5])]).map(({ path }) => path)).toEqual([
      [
        [1, 0],
        [3, 5],
      ],
      [
        [-3, 5],
        [-1, 0],
      ],
    ])
  })

  it("are joined where they cross it", () => {
    expect(symmetricLines([line([-2, 4], [2, 8], [5, 9])]).map(({ path }) => path)).toEqual([
      [
        [-5, 9],
        [-2, 8],
        [0, 6],
        [2, 8],
        [5, 9],
      ],
    ])
    expect(symmetricLines([line([4, 1], [2, 2], [-2, 4])]).map(({ path }) => path)).toEqual([
      [
        [4, 1],
        [2, 2],
        [0, 3],
        [-2, 2],
        [-4, 1],
      ],
    ])
  })

  it("vanish on the other half", () => {
    expect(symmetricLines([line([-4, 1], [-2, 2])])).toEqual([])
  })
})
