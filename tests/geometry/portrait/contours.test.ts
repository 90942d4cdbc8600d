import { describe, expect, it } from "vitest"
import { contoursOf } from "../../../geometry/portrait/contours"
import { symmetricMeshOf } from "../../../geometry/portrait/mesh/mesh"
import { seePoints } from "../../../geometry/portrait/mesh/seenMesh"
import { planesBetween } from "../../../geometry/portrait/mesh/surfaceNets"
import { ellipsoid } from "../../../geometry/scalp/fields"
import { add, length, multiply, scale, type Vec3 } from "../../../geometry/surface/vec3"
import { turnedView } from "../../../geometry/surface/views"

const radius = 41
const ball = ellipsoid([0, 0, 0], [radius, radius, radius])
const even = (from: number, to: number) => planesBetween(from, to, () => 4)
const mesh = symmetricMeshOf(ball, { x: even(2, 44), y: even(-45, 45), z: even(-46, 46) })
const axes: Vec3 = [0.8, 1.3, 1.1]
const view = turnedView(0.7, -0.4)
const contours = contoursOf(mesh, seePoints(mesh, axes, view))

describe("the contour of a ball stretched to an ellipsoid", () => {
  it("is one loop that turns away outward everywhere", () => {
    expect(contours).toHaveLength(1)
    for (const { bulge } of contours[0]) expect(bulge).toBeGreaterThan(0)
  })

  it("reaches as far in each direction of the page as the ellipsoid does", () => {
    // Support function of the image of a ball under a linear map M: r |M' d|, here with d = c right + s up.
    for (let angle = 0; angle < 6.28; angle += 0.37) {
      const [c, s] = [Math.cos(angle), Math.sin(angle)]
      const exact = radius * length(multiply(axes, add(scale(view.right, c), scale(view.up, s))))
      const reach = Math.max(...contours[0].map(({ x, y }) => c * x + s * y))
      expect(Math.abs(reach - exact)).toBeLessThan(0.15)
    }
  })

  it("points outward on the page", () => {
    for (const { x, y, outX, outY } of contours[0]) expect(x * outX + y * outY).toBeGreaterThan(0)
  })
})
