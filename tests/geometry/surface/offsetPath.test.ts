import { describe, expect, it } from "vitest"
import { crossesItself } from "../../../geometry/surface/crossesItself"
import { surfacePoint } from "../../../geometry/surface/frames"
import { nearestOnPath } from "../../../geometry/surface/nearestOnPath"
import { offsetPath } from "../../../geometry/surface/offsetPath"
import { measurePath } from "../../../geometry/surface/surfacePath"
import { arcOnBall, ball, ballRadiusMm, onBall } from "../../support/ball"

describe("a path set off to its side", () => {
  const arc = arcOnBall(0.9, 0.2, 1.6)
  const fromTop = (at: readonly [number, number]) => Math.hypot(...at)

  it("runs round the top farther out on the left of a line that turns right", () => {
    const [first, ...rest] = offsetPath(ball, arc, 14)
    for (const at of rest.slice(0, -1)) expect(fromTop(at)).toBeCloseTo(0.9 + 14 / ballRadiusMm, 3)
    expect(fromTop(first)).toBeCloseTo(0.9 + 14 / ballRadiusMm, 1)
  })

  it("runs nearer to the top on the right", () => {
    for (const at of offsetPath(ball, arc, -14).slice(1, -1))
      expect(fromTop(at)).toBeCloseTo(0.9 - 14 / ballRadiusMm, 3)
  })

  it("cuts off the loop inside a bend tighter than the offset", () => {
    const bend = Array.from({ length: 41 }, (_, i) => {
      const turn = -Math.PI / 2 + (Math.PI * i) / 40
      return surfacePoint(0.5 + 0.06 * Math.cos(turn), 0.06 * Math.sin(turn))
    })
    const hairpin = [surfacePoint(0, -0.06), surfacePoint(0.25, -0.06), ...bend, surfacePoint(0.25, 0.06)]
    const outside = offsetPath(ball, hairpin, -9)
    expect(outside).toHaveLength(hairpin.length)
    const inside = offsetPath(ball, hairpin, 9)
    expect(inside.length).toBeLessThan(6)
    expect(crossesItself(inside)).toBe(false)
  })
})

describe("the nearest place of a path", () => {
  it("is the foot of the way there: mm along, and the chord", () => {
    const nearest = nearestOnPath(ball, measurePath(ball, [onBall(0.4, 0), onBall(1.4, 0)]))
    // 25 degrees off the meridian on a great circle square to it at 0.9 radians from the top.
    const offside = (25 * Math.PI) / 180
    const [sine, cosine] = [Math.sin(0.9), Math.cos(0.9)]
    const point = [
      ballRadiusMm * Math.sin(offside),
      ballRadiusMm * Math.cos(offside) * sine,
      ballRadiusMm * Math.cos(offside) * cosine,
    ] as const
    const { alongMm, chordMm } = nearest(point)
    expect(alongMm).toBeCloseTo(0.5 * ballRadiusMm, 0)
    expect(chordMm).toBeCloseTo(2 * ballRadiusMm * Math.sin(offside / 2), 2)
  })
})
