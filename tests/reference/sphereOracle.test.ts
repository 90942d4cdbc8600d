import { geoArea, geoLength } from "d3-geo"
import { describe, expect, it } from "vitest"
import { type SurfacePoint, surfacePoint } from "../../geometry/surface/frames"
import { areaCm2 } from "../../geometry/surface/surfacePatch"
import { lengthMm } from "../../geometry/surface/surfacePath"
import { ball, ballRadiusMm } from "../support/ball"

/** d3-geo measures on a sphere by its own ways (great-circle sides, angle excess): an outside check of ours. */
const degrees = (at: SurfacePoint): [number, number] => {
  const [x, y, z] = ball.pointAt(at)
  return [(Math.atan2(y, x) * 180) / Math.PI, (Math.asin(z / ballRadiusMm) * 180) / Math.PI]
}

/** Sides straight in our map are not great circles, so both are given the same short steps. */
const star = (corners: number, centreU: number, centreV: number, pieces = 60) => {
  const corner = (i: number): SurfacePoint => {
    const turn = (-2 * Math.PI * i) / corners
    const reach = i % 2 === 0 ? 0.55 : 0.21
    return surfacePoint(centreU + reach * Math.sin(turn), centreV + reach * Math.cos(turn))
  }
  return Array.from({ length: corners * pieces }, (_, i) => {
    const [from, to] = [corner(Math.floor(i / pieces)), corner(Math.floor(i / pieces) + 1)]
    const share = (i % pieces) / pieces
    return surfacePoint(from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share)
  })
}

describe("against d3-geo on the ball", () => {
  const stars = [star(10, 0, 0), star(6, 0.7, 0.4), star(8, -1.3, 0.9), star(12, 0.2, -1.6)]

  it("areas agree to 0.02 %", () => {
    for (const outline of stars) {
      const ring = [...outline, outline[0]].map(degrees)
      const steradians = geoArea({ type: "Polygon", coordinates: [ring] })
      const smaller = Math.min(steradians, 4 * Math.PI - steradians)
      expect(areaCm2(ball, outline) / (smaller * (ballRadiusMm / 10) ** 2)).toBeCloseTo(1, 3.7)
    }
  })

  it("lengths agree to 0.02 %", () => {
    for (const path of stars) {
      const radians = geoLength({ type: "LineString", coordinates: path.map(degrees) })
      expect(lengthMm(ball, path) / (radians * ballRadiusMm)).toBeCloseTo(1, 3.7)
    }
  })
})
