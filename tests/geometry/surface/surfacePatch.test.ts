import { describe, expect, it } from "vitest"
import { headSurface } from "../../../geometry/scalp/headSurface"
import { surfacePoint } from "../../../geometry/surface/frames"
import { areaCm2, contains } from "../../../geometry/surface/surfacePatch"
import { arcOnBall, ball, ballRadiusMm, onBall } from "../../support/ball"

const squareCm = (ballRadiusMm / 10) ** 2
const circle = (fromTop: number) => arcOnBall(fromTop, 0, 2 * Math.PI, 720).slice(0, -1)

describe("area on a ball", () => {
  it("of a cap is 2 pi r2 (1 - cos)", () => {
    for (const reach of [0.1, 0.77, 1.6])
      expect(areaCm2(ball, circle(reach)) / (2 * Math.PI * squareCm * (1 - Math.cos(reach)))).toBeCloseTo(
        1,
        4,
      )
  })

  it("of an eighth is pi r2 / 2", () => {
    const eighth = [onBall(0, 0), ...arcOnBall(Math.PI / 2, 0.4, 0.4 + Math.PI / 2, 200)]
    expect(areaCm2(ball, eighth) / (0.5 * Math.PI * squareCm)).toBeCloseTo(1, 4)
  })

  it("of a strip between two circles is the turn x r2 x the difference of cosines", () => {
    const strip = [...arcOnBall(0.5, 2, 3.1, 200), ...arcOnBall(1.2, 3.1, 2, 200)]
    expect(areaCm2(ball, strip) / (1.1 * squareCm * (Math.cos(0.5) - Math.cos(1.2)))).toBeCloseTo(1, 4)
  })

  it("does not mind which way round it is walked", () => {
    const outline = [onBall(0.3, 0), onBall(0.9, 0.4), onBall(0.8, -0.5)]
    expect(areaCm2(ball, outline.toReversed())).toBeCloseTo(areaCm2(ball, outline), 6)
  })
})

describe("area on the head", () => {
  const outline = [
    surfacePoint(0.2, 0.9),
    surfacePoint(1.1, 0.5),
    surfacePoint(0.6, -0.4),
    surfacePoint(-0.5, 0.1),
  ]

  it("grows with the square of the size", () => {
    const [small, large] = [headSurface([1, 1, 1]), headSurface([1.1, 1.1, 1.1])]
    expect(areaCm2(large, outline) / areaCm2(small, outline)).toBeCloseTo(1.21, 9)
  })

  it("is the sum of the parts a cut leaves", () => {
    const surface = headSurface([0.97, 1.02, 1])
    const [a, b, c, d] = outline
    expect(areaCm2(surface, [a, b, c]) + areaCm2(surface, [a, c, d])).toBeCloseTo(
      areaCm2(surface, outline),
      3,
    )
  })

  it("is the same on the other side", () => {
    const surface = headSurface([0.97, 1.02, 1])
    const mirrored = outline.map(([u, v]) => surfacePoint(-u, v))
    expect(areaCm2(surface, mirrored)).toBeCloseTo(areaCm2(surface, outline), 9)
  })
})

describe("what lies inside an outline", () => {
  const horseshoe = [
    [0, 0],
    [3, 0],
    [3, 2],
    [2, 2],
    [2, 1],
    [1, 1],
    [1, 2],
    [0, 2],
  ].map(([u, v]) => surfacePoint(u, v))

  it("is told from what lies in its bay", () => {
    expect(contains(horseshoe, surfacePoint(0.5, 1.5))).toBe(true)
    expect(contains(horseshoe, surfacePoint(2.4, 1.9))).toBe(true)
    expect(contains(horseshoe, surfacePoint(1.5, 1.5))).toBe(false)
    expect(contains(horseshoe, surfacePoint(-0.1, 0.5))).toBe(false)
  })
})
