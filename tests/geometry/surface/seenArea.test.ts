import { describe, expect, it } from "vitest"
import { type SurfacePoint, surfacePoint, type ViewPoint } from "../../../geometry/surface/frames"
import { horizonOf } from "../../../geometry/surface/horizon"
import { seenArea } from "../../../geometry/surface/seenArea"
import { fixedViews, toView, turnedView } from "../../../geometry/surface/views"
import { ballRadiusMm as radiusMm, ball as surface } from "../../support/ball"

const middle = surface.centre

/** A ring round the pole of the map, walked to the left. */
const roundPole = (reach: number): SurfacePoint[] =>
  Array.from({ length: 180 }, (_, i) =>
    surfacePoint(reach * Math.cos((i * Math.PI) / 90), reach * Math.sin((i * Math.PI) / 90)),
  )

const areaMm2 = (outline: readonly ViewPoint[]) =>
  outline.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length]
    return sum + (x * nextY - nextX * y) / 2
  }, 0)
const seenMm2 = (...[ring, view]: [SurfacePoint[], Parameters<typeof seenArea>[1]]) =>
  seenArea(ring, view, surface).reduce((sum, outline) => sum + areaMm2(outline), 0)

describe("the horizon of a ball", () => {
  it.each([fixedViews.front, fixedViews.left, fixedViews.top, turnedView(0.7, 0.4)])(
    "is a circle of its radius, walked to the left",
    (view) => {
      const horizon = horizonOf(view, surface)
      for (const { page } of horizon) expect(Math.hypot(page[0], page[1])).toBeCloseTo(radiusMm, 0)
      expect(areaMm2(horizon.map(({ page }) => page)) / (Math.PI * radiusMm ** 2)).toBeCloseTo(1, 2)
    },
  )
})

describe("what can be seen of an area", () => {
  const pole = surface.pointAt(surfacePoint(0, 0)).map((value, i) => (value - middle[i]) / radiusMm)
  const tilt = Math.atan2(-pole[1], pole[2])

  it("is all of a cap looked at from above: pi r squared sine squared", () => {
    const above = turnedView(0, Math.PI / 2 + tilt)
    expect(seenMm2(roundPole(0.8), above)).toBeCloseTo(Math.PI * (radiusMm * Math.sin(0.8)) ** 2, -2)
  })
  it("is all the page when only the far side lies outside it", () => {
    const above = turnedView(0, Math.PI / 2 + tilt)
    expect(seenMm2(roundPole(2), above) / (Math.PI * radiusMm ** 2)).toBeCloseTo(1, 2)
  })
  it("is nothing of a cap on the far side", () => {
    expect(seenArea(roundPole(0.8), turnedView(0, tilt + 0.1 - Math.PI / 2), surface)).toEqual([])
  })
  it("is a segment of the page for a cap looked at from the side: r squared (a - sin a cos a)", () => {
    const side = turnedView(0, tilt)
    const segment = radiusMm ** 2 * (0.8 - Math.sin(0.8) * Math.cos(0.8))
    expect(seenMm2(roundPole(0.8), side) / segment).toBeCloseTo(1, 2)
  })
  it("is the page less a segment for all but a cap", () => {
    const side = turnedView(0, tilt)
    const left = Math.PI - (0.8 - Math.sin(0.8) * Math.cos(0.8))
    expect(seenMm2(roundPole(Math.PI - 0.8), side) / (radiusMm ** 2 * left)).toBeCloseTo(1, 2)
  })
  it("is the ring itself on the scalp laid flat", () => {
    const ring = roundPole(0.8)
    expect(seenArea(ring, fixedViews.unrolled, surface)).toEqual([
      ring.map((at) => toView(fixedViews.unrolled, surface, at)),
    ])
  })
})
