import { describe, expect, it } from "vitest"
import { surfacePoint } from "../../../geometry/surface/frames"
import { hairlineDivider, straightDivider } from "../../../geometry/working/workingSectionDraw"
import { arcOnBall, ballHairReach, ballHead, ballRadiusMm, onBall } from "../../support/ball"

const partingOf = (made: ReturnType<typeof straightDivider>) => {
  if ("refused" in made) throw new Error(made.refused)
  return made.parting
}
const reach = ([u, v]: readonly [number, number]) => Math.hypot(u, v)
const profile = [onBall(ballHairReach, Math.PI), surfacePoint(0, 0), onBall(ballHairReach, 0)]

describe("a straight dividing parting on a ball", () => {
  const right = Math.PI / 2
  it("runs on from a short stroke to the hairline at both ends, along the great circle", () => {
    const parting = partingOf(straightDivider(ballHead, [], onBall(0.3, right), onBall(0.5, right)))
    expect(reach(parting[0])).toBeCloseTo(ballHairReach, 2)
    expect(reach(parting[parting.length - 1])).toBeCloseTo(ballHairReach, 2)
    // A great circle through the pole of the map is a straight line through its middle.
    expect(parting.every(([, v]) => Math.abs(v) < 1e-6)).toBe(true)
  })
  it("ends on another where the stroke begins near it, on either side", () => {
    for (const startMm of [-12, 12]) {
      const from = onBall(startMm / ballRadiusMm, right)
      const parting = partingOf(straightDivider(ballHead, [profile], from, onBall(1, right)))
      expect(reach(parting[0])).toBeLessThan(0.02)
      expect(parting[parting.length - 1][0]).toBeCloseTo(ballHairReach, 2)
    }
  })
  it("crosses another where the stroke goes well over it", () => {
    const parting = partingOf(straightDivider(ballHead, [profile], onBall(0.8, -right), onBall(0.8, right)))
    expect(parting[0][0]).toBeCloseTo(-ballHairReach, 2)
    expect(parting[parting.length - 1][0]).toBeCloseTo(ballHairReach, 2)
  })
  it("is refused outside the hair", () => {
    expect(straightDivider(ballHead, [], onBall(2.1, 1), onBall(2.2, 1.1))).toEqual({
      refused: "outside-hairline",
    })
  })
})

it("keeps its distance from the hairline and drops to it at both ends", () => {
  const behindMm = 30
  const mmAround = ballRadiusMm * Math.sin(ballHairReach)
  const parting = partingOf(
    hairlineDivider(ballHead, { fromAlongMm: -0.8 * mmAround, toAlongMm: 0.8 * mmAround, behindMm }),
  )
  const arc = arcOnBall(ballHairReach - behindMm / ballRadiusMm, -0.8, 0.8)
  expect(reach(parting[0])).toBeCloseTo(ballHairReach, 2)
  expect(reach(parting[parting.length - 1])).toBeCloseTo(ballHairReach, 2)
  expect(reach(parting[parting.length >> 1])).toBeCloseTo(reach(arc[20]), 2)
})
