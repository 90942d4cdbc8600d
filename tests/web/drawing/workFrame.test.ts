import { describe, expect, it } from "vitest"
import { straightParting } from "../../../geometry/parting/parting"
import { viewPoint } from "../../../geometry/surface/frames"
import { fixedViews, toView } from "../../../geometry/surface/views"
import { newPlan } from "../../../web/core/document/newPlan"
import { newSection } from "../../../web/core/document/newSection"
import { headOf } from "../../../web/core/figures/measured"
import { pictureOf } from "../../../web/drawing/headDrawing"
import { labelRing, ringWithin } from "../../../web/drawing/labelRings"
import { fitsHairlineFrame, hairlineFrame } from "../../../web/drawing/workFrame"
import { framePlan } from "../../support/framePlan"

const plan = newPlan(new Date("2026-03-09T12:00:00Z"))
const head = headOf(plan)
const sceneOf = (name: "front" | "top") => pictureOf(head, name).scene

describe("the frame of the hairline", () => {
  it("holds the front hairline from temple to temple", () => {
    const [left, bottom, right, top] = hairlineFrame("front", head.axes)
    for (let alongMm = -75; alongMm <= 75; alongMm += 5) {
      const [x, y] = toView(
        fixedViews.front,
        head.surface,
        head.hairline.pointAlong((alongMm + head.hairline.lengthMm) % head.hairline.lengthMm),
      )
      expect([x > left, x < right, y > bottom, y < top]).toEqual([true, true, true, true])
    }
  })

  it("is enough for a face frame, and not for a slice behind the crown", () => {
    const crown = straightParting(
      head,
      head.surface.toSurface([-30, -60, 110]),
      head.surface.toSurface([30, -60, 110]),
    )
    if ("refused" in crown) throw new Error("no parting there")
    const behind = { ...plan, sections: [newSection("slice", crown.parting, plan)] }
    expect(fitsHairlineFrame(framePlan, "front", sceneOf("front"))).toBe(true)
    expect(fitsHairlineFrame(framePlan, "top", sceneOf("top"))).toBe(true)
    expect(fitsHairlineFrame(behind, "top", sceneOf("top"))).toBe(false)
  })
})

describe("numbers round the head", () => {
  const ring = labelRing("front", [1, 1, 1])

  it("stand where they did on a page that holds the whole ring", () => {
    expect(ringWithin(ring, ring.centre, 300, 300)).toEqual(ring)
  })

  it("are drawn in to a page that is lower, and touch its edge", () => {
    const drawn = ringWithin(ring, viewPoint(0, 80), 200, 60)
    expect(drawn.centre[1] + drawn.halfHeightMm).toBeCloseTo(140)
    expect(drawn.centre[1] - drawn.halfHeightMm).toBeCloseTo(20)
    expect(drawn.halfWidthMm).toBe(ring.halfWidthMm)
  })

  it("stay round the head when the page has been moved away from it", () => {
    expect(ringWithin(ring, viewPoint(400, 52), 60, 60)).toEqual(ring)
  })
})
