import { describe, expect, it } from "vitest"
import { newSection } from "../../../../web/core/document/newSection"
import type { Plan } from "../../../../web/core/document/schema"
import { repeatBehind } from "../../../../web/core/edits/lay/repeatBehind"
import { moveSections } from "../../../../web/core/edits/parting/moveSections"
import { addSections } from "../../../../web/core/edits/sections/addSections"
import { clearOverlap } from "../../../../web/core/edits/sections/clearOverlap"
import { measured } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { done, emptyPlan, refusal, rightParting } from "../../../support/samples"

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
    expect(refusal(clearOverlap("s2", "s1"), twice)).toBe(
      "Making it thinner does not part the two. Move one of them.",
    )
  })
})
