import { describe, expect, it } from "vitest"
import { surfacePoint } from "../../../geometry/surface/frames"
import { firstHit, mapDirections, normalAt, sphereSurface } from "../../../geometry/surface/surface"
import { distance, dot, length } from "../../../geometry/surface/vec3"

const sphere = sphereSurface(90)

describe("the map of directions", () => {
  it("puts the pole on top and front forward", () => {
    const { at } = mapDirections(0)
    expect(at(0, 0)).toEqual([0, 0, 1])
    expect(at(0, Math.PI / 2)[1]).toBeCloseTo(1, 12)
    expect(at(Math.PI / 2, 0)[0]).toBeCloseTo(1, 12)
  })

  it("finds its way back for a tilted pole", () => {
    const { at, inverse } = mapDirections(0.43)
    for (const [u, v] of [
      [0.3, -1.1],
      [-1.7, 0.2],
      [0, 2.1],
      [1e-9, -2e-9],
    ]) {
      const back = inverse(at(u, v))
      expect(back[0]).toBeCloseTo(u, 9)
      expect(back[1]).toBeCloseTo(v, 9)
    }
  })

  it("has the slopes of its own differences", () => {
    const { at, slopes } = mapDirections(0.43)
    const h = 1e-5
    for (const [u, v] of [
      [0.7, -1.2],
      [0.004, 0.003],
      [-1.9, 0.6],
    ]) {
      const [du, dv] = slopes(u, v)
      for (let axis = 0; axis < 3; axis++) {
        expect(du[axis]).toBeCloseTo((at(u + h, v)[axis] - at(u - h, v)[axis]) / (2 * h), 7)
        expect(dv[axis]).toBeCloseTo((at(u, v + h)[axis] - at(u, v - h)[axis]) / (2 * h), 7)
      }
    }
  })
})

describe("a sphere as a surface", () => {
  it("keeps its radius and an outward normal", () => {
    const at = surfacePoint(0.8, -1.3)
    const point = sphere.pointAt(at)
    expect(length(point)).toBeCloseTo(90, 10)
    expect(dot(normalAt(sphere, at), point) / 90).toBeCloseTo(1, 10)
  })

  it("is hit by a ray where geometry says", () => {
    const hit = firstHit(sphere, [30, 500, 20], [0, -1, 0])
    if (!hit) throw new Error("the ray must hit")
    const expected: [number, number, number] = [30, Math.sqrt(90 ** 2 - 30 ** 2 - 20 ** 2), 20]
    expect(distance(sphere.pointAt(hit), expected)).toBeLessThan(1e-4)
  })

  it("is missed by a ray that passes beside it", () => {
    expect(firstHit(sphere, [95, 500, 0], [0, -1, 0])).toBeNull()
  })
})
