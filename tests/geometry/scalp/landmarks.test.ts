import { describe, expect, it } from "vitest"
import { headSurface } from "../../../geometry/scalp/headSurface"
import { landmark, landmarkOn, leftLandmarkOn } from "../../../geometry/scalp/landmarks"
import { surfacePoint } from "../../../geometry/surface/frames"

const surface = headSurface([1, 1, 1])

/** Places within 12 mm of a landmark. */
const near = (name: Parameters<typeof landmark>[0]) => {
  const [u, v] = landmark(name)
  const steps = [-0.12, -0.06, -0.02, 0, 0.02, 0.06, 0.12]
  return steps.flatMap((du) => steps.map((dv) => surface.pointAt(surfacePoint(u + du, v + dv))))
}

describe("landmarks", () => {
  it("are extreme where their name says so, to a hundredth of a millimetre", () => {
    const highest = Math.max(...near("vertex").map(([, , z]) => z))
    const rearmost = Math.min(...near("opisthocranion").map(([, y]) => y))
    const widest = Math.max(...near("euryon").map(([x]) => x))
    expect(highest - landmarkOn(surface, "vertex")[2]).toBeLessThan(0.01)
    expect(landmarkOn(surface, "opisthocranion")[1] - rearmost).toBeLessThan(0.01)
    expect(widest - landmarkOn(surface, "euryon")[0]).toBeLessThan(0.01)
  })

  it("are mirrored on the left", () => {
    const [x, y, z] = landmarkOn(surface, "tragion")
    expect(leftLandmarkOn(surface, "tragion")).toEqual([-x, y, z])
  })

  it("put the origin of the frame between the tragions", () => {
    const [, y, z] = landmarkOn(surface, "tragion")
    expect(Math.abs(y)).toBeLessThan(0.2)
    expect(Math.abs(z)).toBeLessThan(0.2)
  })

  it("move with the axes", () => {
    const [x, y, z] = landmarkOn(surface, "earTop")
    const stretched = landmarkOn(headSurface([1.1, 0.9, 1.05]), "earTop")
    expect(stretched[0]).toBeCloseTo(1.1 * x, 9)
    expect(stretched[1]).toBeCloseTo(0.9 * y, 9)
    expect(stretched[2]).toBeCloseTo(1.05 * z, 9)
  })
})
