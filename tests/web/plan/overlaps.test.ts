import { describe, expect, it } from "vitest"
import { addSections } from "../../../web/plan/edits/addSections"
import { clearOverlap } from "../../../web/plan/edits/clearOverlap"
import { moveSections } from "../../../web/plan/edits/moveSections"
import { repeatBehind } from "../../../web/plan/edits/repeatBehind"
import { examplePlan } from "../../../web/plan/examplePlan"
import { measured } from "../../../web/plan/measured"
import { newSection } from "../../../web/plan/newSection"
import type { Plan } from "../../../web/plan/schema"
import { done, emptyPlan, refusal, rightParting } from "./samples"

const overlapsOf = (plan: Plan) => measured(plan).overlaps

const one = done(addSections(newSection("weave", rightParting, emptyPlan)), emptyPlan)
const apart = done(repeatBehind("s1", 4), one)

describe("sections that take the same hair", () => {
  it("are none in the example, nor between a section and the same again behind it", () => {
    expect(overlapsOf(examplePlan())).toEqual([])
    expect(overlapsOf(apart)).toEqual([])
  })

  it("are found when one is moved onto the other, and parted again by thinning", () => {
    const onto = done(moveSections(["s2"], { alongMm: 0, behindMm: -7 }), apart)
    const [{ earlier, later, areaCm2 }] = overlapsOf(onto)
    expect([earlier.id, later.id]).toEqual(["s1", "s2"])
    expect(areaCm2).toBeGreaterThan(0.5)
    expect(overlapsOf(done(clearOverlap("s2", "s1"), onto))).toEqual([])
  })

  it("cannot be parted by thinning when one lies on the other", () => {
    const copy = { ...newSection("weave", rightParting, one), id: "s2" }
    const twice = done(addSections(copy), one)
    expect(refusal(clearOverlap("s2", "s1"), twice)).toBe("Thinning does not part the two: move one of them.")
  })
})
