import { describe, expect, it } from "vitest"
import { headSurface } from "../../../geometry/scalp/headSurface"
import { surfacePoint } from "../../../geometry/surface/frames"
import { headingLeft, walk } from "../../../geometry/surface/surfaceWalk"
import { distance, dot, length, normalize } from "../../../geometry/surface/vec3"
import { ball, ballRadiusMm, onBall } from "../../support/ball"

describe("walking on a ball", () => {
  it("follows a great circle: 47 mm down from the top is 47/90 radians", () => {
    const { at } = walk(ball, { at: onBall(0, 0), heading: [0.6, 0.8, 0] }, 47)
    const end = onBall(47 / 90, Math.atan2(0.6, 0.8))
    expect(distance(ball.pointAt(at), ball.pointAt(end))).toBeLessThan(0.01)
  })

  it("stands square to where it started after a quarter of the way round", () => {
    const start = { at: onBall(0.8, 0.3), heading: headingLeft(ball, onBall(0.8, 0.3), 0.4, 1) }
    const { at } = walk(ball, start, 0.5 * Math.PI * ballRadiusMm)
    const there = normalize(ball.pointAt(at))
    expect(dot(there, normalize(ball.pointAt(start.at)))).toBeCloseTo(0, 3)
    expect(dot(there, start.heading)).toBeCloseTo(1, 5)
  })
})

describe("walking on the head", () => {
  const surface = headSurface([1.03, 0.96, 1.01])
  const start = { at: surfacePoint(0.5, 0.9), heading: headingLeft(surface, surfacePoint(0.5, 0.9), 1, 0.3) }

  it("finds its way back", () => {
    const there = walk(surface, start, 61)
    const back = walk(surface, there, -61)
    expect(distance(surface.pointAt(back.at), surface.pointAt(start.at))).toBeLessThan(0.02)
  })

  it("keeps a heading of unit length that lies on the surface", () => {
    const { at, heading } = walk(surface, start, 33)
    const [along, across] = surface.tangentsAt(at)
    const normal = normalize([
      along[1] * across[2] - along[2] * across[1],
      along[2] * across[0] - along[0] * across[2],
      along[0] * across[1] - along[1] * across[0],
    ])
    expect(length(heading)).toBeCloseTo(1, 12)
    expect(Math.abs(dot(heading, normal))).toBeLessThan(0.05)
  })

  it("has its left on the left: to the front for a line that runs to the head's right", () => {
    expect(headingLeft(surface, surfacePoint(0, 0), 1, 0)[1]).toBeGreaterThan(0.8)
  })
})
