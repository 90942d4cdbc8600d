import { describe, expect, it } from "vitest"
import { castRay } from "../../../../geometry/portrait/mesh/castRay"
import { drawnHeadDistance } from "../../../../geometry/portrait/mesh/drawnHead"
import { drawHead } from "../../../../geometry/portrait/outline"
import { headSurface } from "../../../../geometry/scalp/headSurface"
import { surfacePoint } from "../../../../geometry/surface/frames"
import { multiply, type Vec3 } from "../../../../geometry/surface/vec3"
import { facing, fixedViews, turnedView } from "../../../../geometry/surface/views"

const axes: Vec3 = [0.97, 1.04, 1.02]
const depthFrom = (view: Parameters<typeof drawHead>[1]) => drawHead(axes, view).depth
const onHead = (origin: Vec3, direction: Vec3): Vec3 => {
  const place = castRay(drawnHeadDistance, origin, direction)
  if (!place) throw new Error(`no head at ${origin}`)
  return multiply(place, axes)
}
const noseTip = onHead([0, 200, -18], [0, -1, 0])
const crown = onHead([0, -30, 300], [0, 0, -1])
/** On the scalp 28 mm behind the ear's hole, where the ear stands over it. */
const behindEar = onHead([200, -28, 10], [-1, 0, 0])

describe("what hides a place", () => {
  it("hides the nose from behind only", () => {
    expect(depthFrom(fixedViews.back).hides(noseTip)).toBe(true)
    for (const view of [fixedViews.front, fixedViews.left, fixedViews.right, fixedViews.top])
      expect(depthFrom(view).hides(noseTip)).toBe(false)
  })

  it("hides the crown from below the chin", () => {
    expect(depthFrom(turnedView(0.3, -1.4)).hides(crown)).toBe(true)
    expect(depthFrom(fixedViews.top).hides(crown)).toBe(false)
    expect(depthFrom(turnedView(2.6, 0.9)).hides(crown)).toBe(false)
  })

  it("hides the scalp behind an ear from the side and shows it from behind", () => {
    expect(depthFrom(fixedViews.right).hides(behindEar)).toBe(true)
    expect(depthFrom(fixedViews.left).hides(behindEar)).toBe(true)
    expect(depthFrom(turnedView(2.5, 0)).hides(behindEar)).toBe(false)
  })

  it("takes a margin", () => {
    const inside: Vec3 = [crown[0], crown[1], crown[2] - 8]
    expect(depthFrom(fixedViews.top).hides(inside)).toBe(true)
    expect(depthFrom(fixedViews.top).hides(inside, 10)).toBe(false)
  })

  it("never hides the upper scalp where it faces the viewer", () => {
    const surface = headSurface(axes)
    for (const view of [fixedViews.front, fixedViews.back, fixedViews.top, turnedView(-0.8, 0.3)]) {
      const depth = depthFrom(view)
      for (let u = -1; u <= 1; u += 0.25)
        for (let v = -1; v <= 1; v += 0.25)
          if (facing(view, surface, surfacePoint(u, v)) > 0.05)
            expect(depth.hides(surface.pointAt(surfacePoint(u, v)))).toBe(false)
    }
  })
})
