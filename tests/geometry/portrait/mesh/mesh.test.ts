import { describe, expect, it } from "vitest"
import { drawnHeadDistance } from "../../../../geometry/portrait/mesh/drawnHead"
import { rightEarDistance } from "../../../../geometry/portrait/mesh/ear"
import { bodyParts } from "../../../../geometry/portrait/mesh/headMesh"
import { type Mesh, meshOf, mirroredMesh, symmetricMeshOf } from "../../../../geometry/portrait/mesh/mesh"
import { planesBetween } from "../../../../geometry/portrait/mesh/surfaceNets"
import { ellipsoid } from "../../../../geometry/scalp/fields"
import { cross, dot, subtract, type Vec3 } from "../../../../geometry/surface/vec3"

const radius = 37
const ball = ellipsoid([0, 0, 0], [radius, radius, radius])
const even = (from: number, to: number) => planesBetween(from, to, () => 4)
const sphere = symmetricMeshOf(ball, { x: even(2, 40), y: even(-41, 41), z: even(-42, 42) })

const pointsOf = ({ points }: Mesh) =>
  Array.from(
    { length: points.length / 3 },
    (_, i): Vec3 => [points[3 * i], points[3 * i + 1], points[3 * i + 2]],
  )

/** How many triangles use each edge. */
function usesOf({ edges, triangleEdges }: Mesh) {
  const uses = new Array<number>(edges.length / 2).fill(0)
  for (const edge of triangleEdges) uses[edge] += 1
  return uses
}

/** Volume inside, by the divergence theorem: positive when triangles run counter-clockwise seen from outside. */
function volumeOf(mesh: Mesh) {
  const points = pointsOf(mesh)
  let sixfold = 0
  for (let i = 0; i < mesh.triangles.length; i += 3) {
    const [a, b, c] = [...mesh.triangles.slice(i, i + 3)].map((k) => points[k])
    sixfold += dot(a, cross(b, c))
  }
  return sixfold / 6
}

describe("the mesh of a ball", () => {
  it("is closed", () => {
    expect(new Set(usesOf(sphere))).toEqual(new Set([2]))
  })

  it("lies on the ball with its normals along the radius", () => {
    pointsOf(sphere).forEach((point, i) => {
      expect(Math.abs(Math.hypot(...point) - radius)).toBeLessThan(0.05)
      const normal: Vec3 = [sphere.normals[3 * i], sphere.normals[3 * i + 1], sphere.normals[3 * i + 2]]
      expect(dot(normal, point) / radius).toBeGreaterThan(0.999)
    })
  })

  it("holds the ball's volume within what flat triangles cut off", () => {
    const exact = (4 / 3) * Math.PI * radius ** 3
    expect(volumeOf(sphere)).toBeLessThan(exact)
    expect(volumeOf(sphere)).toBeGreaterThan(exact * 0.99)
    expect(volumeOf(mirroredMesh(sphere))).toBeCloseTo(volumeOf(sphere), 6)
  })

  it("needs no plane of symmetry", () => {
    const aside = meshOf(ellipsoid([5, -3, 2], [11, 17, 23]), {
      x: even(-20, 30),
      y: even(-30, 30),
      z: even(-30, 30),
    })
    expect(new Set(usesOf(aside))).toEqual(new Set([2]))
    expect(volumeOf(aside) / ((4 / 3) * Math.PI * 11 * 17 * 23)).toBeCloseTo(0.98, 1)
  })
})

describe("the head's meshes", () => {
  const [head, rightEar, leftEar] = bodyParts().map(({ mesh }) => mesh)

  it("are closed", () => {
    for (const mesh of [head, rightEar, leftEar]) expect(new Set(usesOf(mesh))).toEqual(new Set([2]))
  })

  it("lie on their surfaces within 0.05 mm", () => {
    for (const point of pointsOf(head)) expect(Math.abs(drawnHeadDistance(...point))).toBeLessThan(0.05)
    for (const point of pointsOf(rightEar)) expect(Math.abs(rightEarDistance(...point))).toBeLessThan(0.05)
  })

  it("are mirror images exactly", () => {
    const keys = new Set(pointsOf(head).map(String))
    for (const [x, y, z] of pointsOf(head)) expect(keys.has(String([x === 0 ? 0 : -x, y, z]))).toBe(true)
    pointsOf(leftEar).forEach((point, i) => {
      const [x, y, z] = pointsOf(rightEar)[i]
      expect(subtract(point, [-x, y, z])).toEqual([0, 0, 0])
    })
  })
})
