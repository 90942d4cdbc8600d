import { describe, expect, it } from "vitest"
import { viewPoint } from "../../../geometry/surface/frames"
import { placeLabels } from "../../../web/drawing/labels"

const ring = { centre: viewPoint(5, 40), halfWidthMm: 100, halfHeightMm: 100 }

describe("labels round a drawing", () => {
  it("stand on the ring in the direction of what they name", () => {
    const [right, top] = placeLabels([viewPoint(45, 40), viewPoint(5, 90)], ring, 8)
    expect(right[0]).toBeCloseTo(105, 9)
    expect(right[1]).toBeCloseTo(40, 9)
    expect(top[0]).toBeCloseTo(5, 9)
    expect(top[1]).toBeCloseTo(140, 9)
  })

  it("keep their distance and their order when anchors crowd together", () => {
    const anchors = [viewPoint(44, 41), viewPoint(45, 40), viewPoint(46, 40.5)]
    const places = placeLabels(anchors, ring, 12)
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < i; j++)
        expect(Math.hypot(places[i][0] - places[j][0], places[i][1] - places[j][1])).toBeGreaterThan(11.9)
    expect(places[0][1]).toBeGreaterThan(places[2][1])
    expect(places[2][1]).toBeGreaterThan(places[1][1])
  })

  it("shares the ring out when there are more than it holds", () => {
    const anchors = Array.from({ length: 200 }, (_, i) => viewPoint(50 + (i % 7), 60))
    for (const [x, y] of placeLabels(anchors, ring, 12)) expect(Number.isFinite(x + y)).toBe(true)
  })
})
