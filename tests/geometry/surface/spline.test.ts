import { describe, expect, it } from "vitest"
import { surfacePoint } from "../../../geometry/surface/frames"
import { smoothLine, splineThrough } from "../../../geometry/surface/spline"
import { mapDistance, type SurfacePath } from "../../../geometry/surface/surfacePath"
import { arcOnBall } from "../../support/ball"

const sharesAPoint = (path: SurfacePath, at: SurfacePath[number]) =>
  path.some((point) => mapDistance(point, at) < 1e-12)

describe("a smooth line", () => {
  const controls = [
    [0, 0],
    [0.3, 0.1],
    [0.35, 0.5],
    [0.9, 0.45],
  ].map(([u, v]) => surfacePoint(u, v))

  it("runs through all its points", () => {
    const line = smoothLine(controls, 6)
    expect(line).toHaveLength(3 * 6 + 1)
    for (const at of controls) expect(sharesAPoint(line, at)).toBe(true)
  })

  it("keeps to a circle whose points it is given, ends included", () => {
    for (const [u, v] of smoothLine(arcOnBall(0.5, 0, 1.2, 8), 10))
      expect(Math.hypot(u, v)).toBeCloseTo(0.5, 4)
  })

  it("is straight between two points, and through points in line", () => {
    expect(smoothLine([controls[0], controls[3]], 6)).toEqual([controls[0], controls[3]])
    const inLine = [0, 0.1, 0.45, 0.5].map((share) => surfacePoint(2 * share, share))
    for (const [u, v] of smoothLine(inLine, 5)) expect(u - 2 * v).toBeCloseTo(0, 12)
  })

  it("does not stumble over a point given twice", () => {
    const twice = [controls[0], controls[1], controls[1], controls[2]]
    expect(smoothLine(twice, 4)).toEqual(smoothLine(controls.slice(0, 3), 4))
  })

  it("leaves out the controls that only steer", () => {
    const line = splineThrough(controls, 3)
    expect(line[0]).toEqual(controls[1])
    expect(line[line.length - 1]).toEqual(controls[2])
  })
})
