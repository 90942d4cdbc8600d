import { describe, expect, it } from "vitest"
import { features } from "../../../geometry/portrait/features"
import { drawnHeadDistance } from "../../../geometry/portrait/mesh/drawnHead"
import { rightEarDistance } from "../../../geometry/portrait/mesh/ear"

describe("the features", () => {
  it("lie on the head or on an ear", () => {
    for (const { points } of features())
      for (let i = 0; i < points.length; i += 3) {
        const [x, y, z] = points.slice(i, i + 3)
        const off = Math.min(
          Math.abs(drawnHeadDistance(x, y, z)),
          Math.abs(rightEarDistance(Math.abs(x), y, z)),
        )
        expect(off).toBeLessThan(0.1)
      }
  })

  it("have normals along which the surface falls away", () => {
    for (const { part, points, normals } of features())
      for (let i = 0; part !== "ear" && i < points.length; i += 3) {
        const [x, y, z] = points.slice(i, i + 3).map((place, axis) => place + normals[i + axis])
        // One mm along a unit normal is about one mm off the skin, less where the skin folds.
        expect(drawnHeadDistance(x, y, z)).toBeGreaterThan(0.3)
        expect(drawnHeadDistance(x, y, z)).toBeLessThan(1.2)
      }
  })

  it("come in mirrored pairs or cross the midline", () => {
    const lashLines = features().filter(({ part, weight }) => part === "eye" && weight === "bold")
    expect(lashLines).toHaveLength(2)
    for (let i = 0; i < lashLines[0].points.length; i++)
      expect(lashLines[0].points[i]).toBe((i % 3 === 0 ? -1 : 1) * lashLines[1].points[i])
    for (const { points } of features().filter(({ part }) => part === "lips"))
      expect(points[0]).toBeCloseTo(-points[points.length - 3], 6)
  })
})
