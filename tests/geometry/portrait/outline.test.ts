import { describe, expect, it } from "vitest"
import type { HeadLine } from "../../../geometry/portrait/headLine"
import { drawHead } from "../../../geometry/portrait/outline"
import { viewPoint } from "../../../geometry/surface/frames"
import type { Vec3 } from "../../../geometry/surface/vec3"
import { fixedViews, type OrthographicView, turnedView } from "../../../geometry/surface/views"

const axes: Vec3 = [0.94, 1.06, 1.05]
const views: Record<string, OrthographicView> = {
  front: fixedViews.front,
  left: fixedViews.left,
  right: fixedViews.right,
  back: fixedViews.back,
  top: fixedViews.top,
  turned: turnedView(-0.7, 0.3),
  fromBelow: turnedView(2.1, -0.6),
}
const linesOf = (view: OrthographicView) => drawHead(axes, view).lines
const points = (lines: readonly HeadLine[]) => lines.flatMap(({ path }) => path)

/** Distance of a page point from the nearest of some lines, mm. */
function distanceTo(lines: readonly HeadLine[], [x, y]: readonly [number, number]) {
  let nearest = Number.POSITIVE_INFINITY
  for (const { path } of lines)
    for (let i = 1; i < path.length; i++) {
      const [[ax, ay], [bx, by]] = [path[i - 1], path[i]]
      const [dx, dy] = [bx - ax, by - ay]
      const t = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)))
      nearest = Math.min(nearest, Math.hypot(x - ax - dx * t, y - ay - dy * t))
    }
  return nearest
}
const mirrorGap = (lines: readonly HeadLine[], others: readonly HeadLine[]) =>
  Math.max(...points(lines).map(([x, y]) => distanceTo(others, viewPoint(-x, y))))

describe("the drawing of the head", () => {
  for (const name of ["front", "back", "top"])
    it(`is symmetric from the ${name}`, () => {
      const lines = linesOf(views[name])
      expect(mirrorGap(lines, lines)).toBeLessThan(0.1)
    })

  it("is the mirror image from the other side", () => {
    const [left, right] = [linesOf(views.left), linesOf(views.right)]
    expect(mirrorGap(left, right)).toBeLessThan(0.1)
    expect(mirrorGap(right, left)).toBeLessThan(0.1)
  })

  for (const [name, view] of Object.entries(views))
    it(`from ${name} keeps every point finite and within the outer line`, () => {
      const lines = linesOf(view)
      const outer = points(lines.filter(({ weight }) => weight === "bold"))
      const [xs, ys] = [outer.map(([x]) => x), outer.map(([, y]) => y)]
      for (const [x, y] of points(lines.filter(({ part }) => part !== "neck"))) {
        expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true)
        expect(x).toBeGreaterThan(Math.min(...xs) - 0.01)
        expect(x).toBeLessThan(Math.max(...xs) + 0.01)
        expect(y).toBeGreaterThan(Math.min(...ys) - 0.01)
        expect(y).toBeLessThan(Math.max(...ys) + 0.01)
      }
    })

  it("shows a face in front, ears alone from behind, neither lip nor lid from above", () => {
    const parts = (view: OrthographicView) => new Set(linesOf(view).map(({ part }) => part))
    for (const part of ["outline", "ear", "eye", "brow", "nose", "lips", "jaw", "neck"] as const)
      expect(parts(views.front)).toContain(part)
    expect(parts(views.back)).toEqual(new Set(["outline", "ear", "neck"]))
    for (const part of ["eye", "lips", "neck"] as const) expect(parts(views.top)).not.toContain(part)
  })

  it("draws no specks", () => {
    const length = ({ path }: HeadLine) =>
      path.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - path[i][0], y - path[i][1]), 0)
    for (const view of Object.values(views))
      for (const line of linesOf(view))
        if (line.part === "outline" || line.part === "nose") expect(length(line)).toBeGreaterThan(3)
  })

  it("is as high as the head it draws", () => {
    // The surveyed woman: tragion to top of head 123.5 mm, raised here by the factor on z.
    const tops = points(linesOf(views.front)).map(([, y]) => y)
    expect(Math.max(...tops)).toBeGreaterThan(123.5 * axes[2] - 4)
    expect(Math.max(...tops)).toBeLessThan(123.5 * axes[2] + 8)
  })
})
