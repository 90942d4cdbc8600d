import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../../geometry/section/section"
import { mirrored } from "../../../../../geometry/surface/frames"
import { newSection } from "../../../../../web/core/document/newSection"
import { setMix } from "../../../../../web/core/edits/plan/setMix"
import { addSections } from "../../../../../web/core/edits/sections/addSections"
import { changeSection } from "../../../../../web/core/edits/sections/changeSections"
import { mirrorSections } from "../../../../../web/core/edits/sections/mirrorSections"
import { pasteSections } from "../../../../../web/core/edits/sections/pasteSections"
import { removeSections } from "../../../../../web/core/edits/sections/removeSections"
import { headOf, measured } from "../../../../../web/core/figures/measured"
import { done, emptyPlan, refusal, rightParting } from "../../../../support/samples"

const one = done(addSections(newSection("weave", rightParting, emptyPlan)), emptyPlan)
const pair = done(mirrorSections("s1"), one)

describe("pasted sections", () => {
  it("lie where they were copied from when that hair is free, as in another plan", () => {
    expect(done(pasteSections(one.sections), emptyPlan).sections).toEqual(one.sections)
    const gone = done(removeSections("s1"), one)
    expect(done(pasteSections(one.sections), gone).sections[0].parting).toBe(one.sections[0].parting)
  })

  it("lie a gap behind when it is not, on no one's hair, under ids and numbers of their own", () => {
    const after = done(pasteSections(one.sections), one)
    const [first, pasted] = after.sections
    expect(measured(after).overlaps).toEqual([])
    const behindMm = (section: typeof first) =>
      headOf(after).hairline.coordinates(section.parting[section.parting.length >> 1]).behindMm
    const depthMm = first.depthMm.start
    expect(behindMm(pasted) - behindMm(first)).toBeGreaterThan(depthMm + 2)
    expect(behindMm(pasted) - behindMm(first)).toBeLessThan(depthMm + 8)
    expect([pasted.id, isFoil(pasted) && pasted.mapNumber]).toEqual(["s2", 2])
    expect(done(pasteSections(one.sections), after).sections.length).toBe(3)
  })

  it("stay a pair when both were copied, and are single when one was", () => {
    const both = done(pasteSections(pair.sections), pair)
    const [third, fourth] = both.sections.slice(2)
    expect([third.twin, fourth.twin]).toEqual([fourth.id, third.id])
    expect(fourth.parting).toEqual(third.parting.map(mirrored))
    expect(done(pasteSections([pair.sections[0]]), pair).sections[2].twin).toBeUndefined()
  })

  it("take the first mix where the plan lacks theirs", () => {
    const other = done(
      changeSection("s1", { treatment: { mix: "B" } }),
      done(setMix({ ...emptyPlan.mixes[0], id: "B" }), one),
    )
    expect(done(pasteSections(other.sections), emptyPlan).sections[0]).toMatchObject({ mix: "A" })
  })

  it("are refused where no hair is left behind", () => {
    const deep = done(changeSection("s1", { band: { depthMm: { start: 60, end: 60 } } }), one)
    let full = deep
    let said: string | null = null
    for (let i = 0; i < 8 && said === null; i++) {
      said = refusal(pasteSections(deep.sections), full)
      if (said === null) full = done(pasteSections(deep.sections), full)
    }
    expect(said).toBe("There is no free hair behind. Move what is there, or paste into another plan.")
  })
})
