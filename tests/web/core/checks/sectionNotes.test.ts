import { describe, expect, it } from "vitest"
import { hairlineParting } from "../../../../geometry/parting/parting"
import { isFoil } from "../../../../geometry/section/section"
import { sliceWarningMm } from "../../../../presets/placement/foils"
import { sectionNotes } from "../../../../web/core/checks/sectionNotes"
import { newConsultation } from "../../../../web/core/document/consultation"
import { newSection } from "../../../../web/core/document/newSection"
import type { Plan } from "../../../../web/core/document/schema"
import { setHair } from "../../../../web/core/edits/plan/setHair"
import { addSections } from "../../../../web/core/edits/sections/addSections"
import { changeSection } from "../../../../web/core/edits/sections/changeSections"
import { cureNote } from "../../../../web/core/edits/sections/cureNote"
import { figuresOf, headOf } from "../../../../web/core/figures/measured"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { done, emptyPlan } from "../../../support/samples"

function parting() {
  const made = hairlineParting(headOf(emptyPlan), { fromAlongMm: 10, toAlongMm: 70, behindMm: 12 })
  if ("refused" in made) throw new Error(made.refused)
  return made.parting
}
const withSlice = (plan: Plan = emptyPlan) => done(addSections(newSection("slice", parting(), plan)), plan)
const onlyFoil = ({ sections }: Plan) => sections.filter(isFoil)[0]
const notes = (plan: Plan) => sectionNotes(plan.sections, plan)

describe("a slice", () => {
  it.each([
    [sliceWarningMm.value, []],
    [sliceWarningMm.value + 0.5, ["deep-slice"]],
    [30, ["deep-slice"]],
  ])("of %d mm is told of where its inside stays darker", (mm, codes) => {
    const plan = withSlice()
    const deep = done(changeSection(onlyFoil(plan).id, { band: { depthMm: { start: 2, end: mm } } }), plan)
    expect(notes(deep).map(({ note }) => note.code)).toEqual(codes)
  })
  it("is made thinner by its cure, and told of no more", () => {
    const plan = withSlice()
    const deep = done(changeSection(onlyFoil(plan).id, { band: { depthMm: { start: 9, end: 4 } } }), plan)
    const [noted] = notes(deep)
    const cured = done(cureNote(noted), deep)
    expect(onlyFoil(cured).depthMm).toEqual({ start: sliceWarningMm.value, end: 4 })
    expect(notes(cured)).toEqual([])
  })
})

describe("hair that its start leaves bare", () => {
  const short = (plan: Plan) => done(setHair({ lengthCm: { front: 6, sides: 6, back: 6 } }), plan)
  it("is refused with the field and the cure", () => {
    const plan = short(withSlice())
    const made = changeSection(onlyFoil(plan).id, { treatment: { rootDistanceMm: 80 } })(plan)
    expect(made).toMatchObject({
      refused: {
        code: "section-problem",
        problem: { path: "rootDistanceMm", code: "nothing-to-coat", startMm: 80 },
      },
    })
  })
  it("is told of where the hair became too short, keeps the clock from starting, and is cured by one touch", () => {
    const plan = withSlice()
    const started = done(changeSection(onlyFoil(plan).id, { treatment: { rootDistanceMm: 80 } }), plan)
    const bare = short(started)
    expect(notes(bare).map(({ note }) => note.code)).toEqual(["bare"])
    expect(timedPlan(bare)).toMatchObject({ ok: false, problems: [{ code: "foil-bare", foil: 1 }] })
    const cured = done(cureNote(notes(bare)[0]), bare)
    expect(notes(cured)).toEqual([])
    expect(figuresOf(onlyFoil(cured), cured).foils).toBe(1)
    expect(timedPlan(cured).ok).toBe(true)
  })
})

describe("the cure of hair left bare", () => {
  const hairOf = (cm: number, plan: Plan) =>
    done(setHair({ lengthCm: { front: cm, sides: cm, back: cm } }), plan)
  const cured = (strand: { from: number; to: number }) => {
    const plan = hairOf(40, withSlice())
    const started = done(
      changeSection(onlyFoil(plan).id, { treatment: { rootDistanceMm: 35, strand } }),
      plan,
    )
    const bare = hairOf(3, started)
    const after = done(cureNote(notes(bare)[0]), bare)
    expect(notes(after)).toEqual([])
    return onlyFoil(after)
  }
  it("covers the new growth of a section meant for regrowth only, and not the ends", () => {
    // 26 mm of new growth on 3 cm of hair: 0.87 of the strand.
    expect(cured({ from: 0, to: 0.1 })).toMatchObject({ rootDistanceMm: 3, strand: { from: 0, to: 0.87 } })
  })
  it("leaves alone what reached far enough, and hair meant to stay bare above the ends", () => {
    expect(cured({ from: 0, to: 0.9 }).strand).toEqual({ from: 0, to: 0.9 })
    expect(cured({ from: 0.6, to: 1 }).strand).toEqual({ from: 0.6, to: 1 })
    expect(cured({ from: 0.4, to: 0.8 }).strand).toEqual({ from: 0.4, to: 0.8 })
    expect(cured({ from: 0, to: 1 }).strand).toEqual({ from: 0, to: 1 })
  })
})

describe("where product starts on a new section", () => {
  const asked: Plan = { ...emptyPlan, consultation: { ...newConsultation(), rootDistanceMm: 20 } }
  it("is what the client asked for", () => {
    expect(onlyFoil(withSlice(asked)).rootDistanceMm).toBe(20)
    expect(onlyFoil(withSlice()).rootDistanceMm).not.toBe(20)
  })
})
