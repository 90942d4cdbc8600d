import { describe, expect, it } from "vitest"
import { surfacePoint } from "../../../geometry/surface/frames"
import {
  between,
  lengthMm,
  mapDistance,
  measurePath,
  mirror,
  pointAlong,
  resample,
  smooth,
} from "../../../geometry/surface/surfacePath"
import { arcOnBall, ball, ballRadiusMm, onBall } from "../../support/ball"

describe("the length of a path", () => {
  it("is the angle times the radius along a meridian", () => {
    expect(lengthMm(ball, [onBall(0.2, 1.1), onBall(1.3, 1.1)])).toBeCloseTo(1.1 * ballRadiusMm, 1)
  })

  it("is the turn times the radius of a circle round the top", () => {
    const expected = 1.7 * ballRadiusMm * Math.sin(0.9)
    expect(lengthMm(ball, arcOnBall(0.9, -0.4, 1.3)) / expected).toBeCloseTo(1, 3)
  })

  it("adds up over its parts", () => {
    const path = [onBall(0.3, 0), onBall(0.8, 0.7), onBall(1.2, 0.2)]
    const parts = lengthMm(ball, path.slice(0, 2)) + lengthMm(ball, path.slice(1))
    expect(lengthMm(ball, path)).toBeCloseTo(parts, 10)
  })
})

describe("points along a path", () => {
  const path = [onBall(0.1, 2), onBall(0.3, 2), onBall(1, 2)]

  it("stand where the mm say", () => {
    const at = pointAlong(measurePath(ball, path), 45)
    expect(mapDistance(at, onBall(0.1 + 45 / ballRadiusMm, 2))).toBeLessThan(1e-4)
  })

  it("stay at the ends beyond them", () => {
    const measured = measurePath(ball, path)
    expect(pointAlong(measured, -3)).toEqual(path[0])
    expect(pointAlong(measured, 9999)).toEqual(path[2])
  })

  it("are even after resampling, whatever they were, with the ends kept", () => {
    const even = resample(ball, path, 7)
    expect(even).toHaveLength(7)
    expect(even[0]).toEqual(path[0])
    expect(even[6]).toEqual(path[2])
    for (let i = 1; i < 7; i++) expect(mapDistance(even[i - 1], even[i])).toBeCloseTo(0.9 / 6, 4)
  })
})

describe("changing a path", () => {
  it("draws a corner to the middle of its neighbours by half, and leaves the ends", () => {
    const [start, corner, end] = [surfacePoint(0, 0), surfacePoint(0.1, 0.4), surfacePoint(0.6, 0)]
    expect(smooth([start, corner, end], 1)).toEqual([start, surfacePoint(0.2, 0.2), end])
  })

  it("mirrors onto the other side", () => {
    expect(mirror([surfacePoint(0.2, 0.7), surfacePoint(0, -0.3)])).toEqual([
      surfacePoint(-0.2, 0.7),
      surfacePoint(0, -0.3),
    ])
  })

  it("finds the place a share of the way", () => {
    expect(between(surfacePoint(1, 2), surfacePoint(5, 4), 0.25)).toEqual(surfacePoint(2, 2.5))
  })
})
