import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../../geometry/parting/parting"
import { type SurfacePoint, surfacePoint } from "../../../../../geometry/surface/frames"
import { lengthMm } from "../../../../../geometry/surface/surfacePath"
import type { Edit } from "../../../../../web/core/document/edit"
import { newSection } from "../../../../../web/core/document/newSection"
import type { Plan } from "../../../../../web/core/document/schema"
import { bend, bendSection } from "../../../../../web/core/edits/parting/bendSection"
import { moveSections } from "../../../../../web/core/edits/parting/moveSections"
import { addSections } from "../../../../../web/core/edits/sections/addSections"
import { headOf } from "../../../../../web/core/figures/measured"
import { crownParting, done, emptyPlan, refusal } from "../../../../support/samples"

const head = headOf(emptyPlan)
const { surface, hairline } = head

const planWith = (parting: readonly SurfacePoint[]) =>
  done(addSections(newSection("slice", parting, emptyPlan)), emptyPlan)
const partingAfter = (edit: Edit, plan: Plan) => done(edit, plan).sections[0].parting
/** 9 mm behind the hairline, from 20 to 75 mm to the head's right. */
function framing() {
  const made = hairlineParting(head, { fromAlongMm: 20, toAlongMm: 75, behindMm: 9 })
  if ("refused" in made) throw new Error(made.refused)
  return planWith(made.parting)
}
const behind = (parting: readonly SurfacePoint[]) => parting.map((at) => hairline.coordinates(at).behindMm)

describe("moving a parting that follows the hairline", () => {
  it("away from the face carries every point so far back", () => {
    const moved = partingAfter(moveSections(["s1"], { alongMm: 0, behindMm: 6 }), framing())
    for (const mm of behind(moved)) expect(Math.abs(mm - 15)).toBeLessThan(0.6)
  })
  it("along it keeps the distance, and carries it to the head's right", () => {
    const plan = framing()
    const moved = partingAfter(moveSections(["s1"], { alongMm: 14, behindMm: 0 }), plan)
    for (const mm of behind(moved)) expect(Math.abs(mm - 9)).toBeLessThan(0.6)
    expect(hairline.coordinates(moved[0]).alongMm).toBeCloseTo(34, 0)
  })
  it("and back again is where it was", () => {
    const plan = framing()
    const there = done(moveSections(["s1"], { alongMm: 5, behindMm: 3 }), plan)
    const back = partingAfter(moveSections(["s1"], { alongMm: -5, behindMm: -3 }), there)
    back.forEach((at, i) => {
      const apart = lengthMm(surface, [at, plan.sections[0].parting[i]])
      expect(apart).toBeLessThan(0.5)
    })
  })
  it("over the hairline is refused", () => {
    expect(refusal(moveSections(["s1"], { alongMm: 0, behindMm: -20 }), framing())).toMatch(
      /^Foil 1: expected a place inside the hairline/,
    )
  })
})

describe("moving a parting of the crown", () => {
  it("keeps its length and shape", () => {
    const plan = planWith(crownParting)
    const moved = partingAfter(moveSections(["s1"], { alongMm: 8, behindMm: 0 }), plan)
    const [long, was] = [lengthMm(surface, moved), lengthMm(surface, crownParting)]
    expect(Math.abs(long / was - 1)).toBeLessThan(0.05)
  })
})

describe("bending", () => {
  const line = [0, 1, 2, 3, 4].map((i) => surfacePoint(i * 0.1, 0))
  it("draws the middle up and leaves the ends, halfway points following by half", () => {
    const bent = bend(line, 2, surfacePoint(0.2, 0.06))
    expect(bent.map(([, v]) => v)).toEqual([0, expect.closeTo(0.03, 12), 0.06, expect.closeTo(0.03, 12), 0])
  })
  it("draws an end and leaves the other", () => {
    const bent = bend(line, 4, surfacePoint(0.4, -0.1))
    expect(bent[4]).toEqual([0.4, -0.1])
    expect(bent[2][1]).toBeCloseTo(-0.05, 12)
    expect(bent[0]).toEqual([0, 0])
  })
  it("is refused where the line would leave the hair", () => {
    expect(refusal(bendSection("s1", 1, surfacePoint(0.3, 2.2)), planWith(crownParting))).toMatch(
      /^Foil 1: expected .* inside the hairline/,
    )
  })
})
