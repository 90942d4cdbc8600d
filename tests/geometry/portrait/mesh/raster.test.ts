import { describe, expect, it } from "vitest"
import { meshOf } from "../../../../geometry/portrait/mesh/mesh"
import { depthAt, mirroredRaster, rasterOf } from "../../../../geometry/portrait/mesh/raster"
import { along, seePoints } from "../../../../geometry/portrait/mesh/seenMesh"
import { planesBetween } from "../../../../geometry/portrait/mesh/surfaceNets"
import { ellipsoid } from "../../../../geometry/scalp/fields"
import { fixedViews } from "../../../../geometry/surface/views"

const even = (from: number, to: number) => planesBetween(from, to, () => 3)
const planes = { x: even(-40, 40), y: even(-70, 40), z: even(-40, 40) }
/** Two balls, the smaller in front of the larger and to the client's right of it. */
const balls = [ellipsoid([0, -30, 0], [30, 30, 30]), ellipsoid([10, 20, 4], [11, 11, 11])]
const subjects = balls.map((ball) => {
  const mesh = meshOf(ball, planes)
  const seen = seePoints(mesh, [1, 1, 1], fixedViews.front)
  return { mesh, seen, tones: along(mesh.points, [0, 1, 0], new Float64Array(mesh.points.length / 3)) }
})
const raster = rasterOf(subjects, 0.5)

describe("a raster of two balls from in front", () => {
  it("keeps the nearer surface whichever is drawn first", () => {
    // From in front the client's right is on the page's left: x = -10. The small ball ends at y = 31 mm.
    expect(depthAt(raster, -10, 4)).toBeCloseTo(31, 0)
    expect(depthAt(rasterOf([...subjects].reverse(), 0.5), -10, 4)).toBeCloseTo(31, 0)
  })

  it("sees the larger ball beside the smaller at its own depth", () => {
    // sqrt(30^2 - 18^2) = 24 in front of its middle at y = -30.
    expect(depthAt(raster, 18, 0)).toBeCloseTo(-6, 0)
  })

  it("has nothing off the balls and off the page", () => {
    expect(depthAt(raster, 25, 25)).toBe(Number.NEGATIVE_INFINITY)
    expect(depthAt(raster, 900, 0)).toBe(Number.NEGATIVE_INFINITY)
  })

  it("carries the tones of the points", () => {
    const column = Math.floor((18 - raster.left) / 0.5)
    const row = Math.floor(raster.top / 0.5)
    expect(raster.tone[row * raster.width + column]).toBeCloseTo(-6, 0)
  })

  it("turns over about x = 0", () => {
    const turned = mirroredRaster(raster)
    expect(depthAt(turned, 10.2, 4.2)).toBe(depthAt(raster, -10.2, 4.2))
    expect(depthAt(turned, -10, 4)).toBeLessThan(10)
  })
})
