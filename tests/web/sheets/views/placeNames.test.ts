import { describe, expect, it } from "vitest"
import { type ViewPoint, viewPoint } from "../../../../geometry/surface/frames"
import { placeNames } from "../../../../web/sheets/views/placeNames"

const ring = { centre: viewPoint(3, -2), halfWidthMm: 90, halfHeightMm: 110 }
const rings = { ring, count: 1 as const, scale: 0.4 }
const name = (x: number, y: number, widthMm = 4) => ({ anchor: viewPoint(x, y), widthMm, heightMm: 4.2 })
const apartMm = ([ax, ay]: ViewPoint, [bx, by]: ViewPoint) => Math.hypot(ax - bx, ay - by)

describe("names round a drawing", () => {
  it("puts a name alone on the ring, over its band", () => {
    const [[x, y]] = placeNames([name(3, 60)], rings)
    expect(x).toBeCloseTo(3, 6)
    expect(y).toBeCloseTo(108, 0)
  })

  it("keeps names of one place apart by their width", () => {
    const [one, other] = placeNames([name(3, 60), name(3, 60)], rings)
    // 4 mm wide and 2.2 mm apart, on paper at 0.4.
    expect(apartMm(one, other)).toBeGreaterThan(6.2 / 0.4)
  })

  it("crosses no leader over another", () => {
    const names = [name(40, 70), name(42, 40), name(44, 68), name(46, 38)]
    const places = placeNames(names, rings)
    const lengthMm = (order: readonly number[]) =>
      order.reduce((sum, place, i) => sum + apartMm(names[i].anchor, places[place]), 0)
    const asPlaced = lengthMm([0, 1, 2, 3])
    for (const swapped of [
      [1, 0, 2, 3],
      [2, 1, 0, 3],
      [0, 2, 1, 3],
      [0, 1, 3, 2],
      [3, 1, 2, 0],
      [0, 3, 2, 1],
    ])
      expect(asPlaced).toBeLessThanOrEqual(lengthMm(swapped) + 1e-6)
  })

  it("stands a wide name further out at the side", () => {
    const [[x]] = placeNames([name(80, -2, 20)], rings)
    expect(x).toBeCloseTo(3 + 90 + (10 - 3.4) / 0.4, 0)
  })
})
