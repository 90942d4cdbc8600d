import { describe, expect, it } from "vitest"
import { surfacePoint } from "../../../geometry/surface/frames"
import {
  firstHit,
  makeSurface,
  mapDirections,
  normalAt,
  type RadiusField,
  sphereSurface,
} from "../../../geometry/surface/surface"
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
})

describe("a surface", () => {
  it("has the tangents of its own differences", () => {
    const bump: RadiusField = (u, v, into) => into.set([80 + 4 * u - 3 * v * v, 4, -6 * v])
    const surface = makeSurface(bump, { centre: [1, 2, 3], poleTilt: 0.43 }, [1.1, 0.9, 1.05], 120)
    const [h, frame] = [1e-5, new Float64Array(9)]
    for (const [u, v] of [
      [0.7, -1.2],
      [0.004, 0.003],
      [-1.9, 0.6],
    ]) {
      surface.frameAt(u, v, frame)
      const rise = (du: number, dv: number, axis: number) =>
        (surface.pointAt(surfacePoint(u + du, v + dv))[axis] -
          surface.pointAt(surfacePoint(u - du, v - dv))[axis]) /
        (2 * h)
      for (let axis = 0; axis < 3; axis++) {
        expect(frame[axis]).toBe(surface.pointAt(surfacePoint(u, v))[axis])
        expect(frame[3 + axis]).toBeCloseTo(rise(h, 0, axis), 5)
        expect(frame[6 + axis]).toBeCloseTo(rise(0, h, axis), 5)
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
