import { describe, expect, it } from "vitest"
import { headSurface } from "../../../geometry/scalp/headSurface"
import { surfacePoint, viewPoint } from "../../../geometry/surface/frames"
import { distance, dot } from "../../../geometry/surface/vec3"
import {
  facing,
  fixedViews,
  fromView,
  project,
  toView,
  turnedView,
  type View,
} from "../../../geometry/surface/views"

const surface = headSurface([1.02, 0.97, 1.01])
const views: Record<string, View> = { ...fixedViews, turned: turnedView(0.6, 0.35) }

describe("every view", () => {
  for (const [name, view] of Object.entries(views))
    it(`${name} finds its way back for places that face the viewer`, () => {
      let seen = 0
      for (let u = -1.9; u <= 1.9; u += 0.37)
        for (let v = -1.9; v <= 1.3; v += 0.41) {
          const at = surfacePoint(u, v)
          if (facing(view, surface, at) < 0.35) continue
          const back = fromView(view, surface, toView(view, surface, at))
          if (!back) throw new Error(`${name} lost ${at}`)
          seen += 1
          expect(distance(surface.pointAt(back), surface.pointAt(at))).toBeLessThan(0.01)
        }
      expect(seen).toBeGreaterThan(8)
    })
})

describe("which side is where", () => {
  const rightEar = [70, 0, 0] as const
  const nose = [0, 100, 0] as const
  it("shows the client's right on the page's left from in front, on its right from behind and above", () => {
    expect(project(fixedViews.front, rightEar)[0]).toBe(-70)
    expect(project(fixedViews.back, rightEar)[0]).toBe(70)
    expect(project(fixedViews.top, rightEar)[0]).toBe(70)
  })
  it("shows the face on the page's right from her right, on its left from her left, at the top from above", () => {
    expect(project(fixedViews.right, nose)[0]).toBe(100)
    expect(project(fixedViews.left, nose)[0]).toBe(-100)
    expect(project(fixedViews.top, nose)[1]).toBe(100)
  })
  it("looks from where it says", () => {
    expect(dot(fixedViews.front.toward, nose)).toBe(100)
    expect(dot(fixedViews.right.toward, rightEar)).toBe(70)
    expect(dot(fixedViews.left.toward, rightEar)).toBe(-70)
    expect(dot(fixedViews.top.toward, [0, 0, 130])).toBe(130)
  })
  it("turns from the front by the client's right to the back", () => {
    const quarter = turnedView(Math.PI / 2, 0)
    expect(project(quarter, nose)[0]).toBeCloseTo(100, 9)
    expect(dot(quarter.toward, rightEar)).toBeCloseTo(70, 9)
    expect(project(turnedView(0, 0), rightEar)[0]).toBeCloseTo(-70, 9)
  })
  it("has nothing under a point beside the head", () => {
    expect(fromView(fixedViews.front, surface, viewPoint(200, 0))).toBeNull()
  })
})
