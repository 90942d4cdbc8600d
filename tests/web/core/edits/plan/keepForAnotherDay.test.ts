import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../../geometry/section/section"
import type { Plan } from "../../../../../web/core/document/schema"
import { laterVisit } from "../../../../../web/core/document/visits"
import { bringBack, keepForAnotherDay, letGoOf } from "../../../../../web/core/edits/plan/keepForAnotherDay"
import { addSections } from "../../../../../web/core/edits/sections/addSections"
import { removeSections } from "../../../../../web/core/edits/sections/removeSections"
import { openPlan, savePlan } from "../../../../../web/core/file/planFile"
import { done, samplePlan } from "../../../../support/samples"

const ids = ({ sections }: Plan) => sections.map(({ id }) => id)
const numbers = ({ sections }: Plan) => sections.filter(isFoil).map(({ mapNumber }) => mapNumber)
const [first, second, third] = ids(samplePlan)
const kept = done(keepForAnotherDay(second, third))

describe("foils kept for another day", () => {
  it("leave today's plan, and are lost neither there nor in its file", () => {
    expect(ids(kept)).not.toContain(second)
    expect(kept.later?.map(({ id }) => id)).toEqual([second, third])
    expect(openPlan(savePlan(kept))).toEqual({ ok: true, plan: kept })
  })
  it("come back as they were, at the end of the order", () => {
    const back = done(bringBack, kept)
    expect(back.later).toBeUndefined()
    expect([...back.sections].sort((a, b) => a.id.localeCompare(b.id))).toEqual(
      [...samplePlan.sections].sort((a, b) => a.id.localeCompare(b.id)),
    )
    expect(ids(back).slice(-2)).toEqual([second, third])
    expect(done(bringBack, samplePlan)).toEqual(samplePlan)
  })
  it("take another number where theirs was given away meanwhile", () => {
    const foils = samplePlan.sections.filter(isFoil)
    const [, taken] = foils
    const other = { ...foils[0], id: "other", mapNumber: taken.mapNumber }
    const crowded = done(addSections(other), done(removeSections(first), kept))
    const back = done(bringBack, crowded)
    expect(new Set(numbers(back)).size).toBe(numbers(back).length)
    expect(numbers(back)).toContain(taken.mapNumber)
  })
  it("leave today's plan for good once another plan has them", () => {
    expect(done(letGoOf([third]), kept).later?.map(({ id }) => id)).toEqual([second])
    const gone = done(letGoOf([second, third]), kept)
    expect(gone).not.toHaveProperty("later")
    expect(ids(gone)).toEqual(ids(kept))
  })
  it("are single in a plan of their own where their twin stays behind, so that it can be opened again", () => {
    const [a, b] = samplePlan.sections
    const paired = [
      { ...a, twin: b.id },
      { ...b, twin: a.id },
    ]
    const today = done(keepForAnotherDay(b.id), {
      ...samplePlan,
      sections: [...paired, ...samplePlan.sections.slice(2)],
    })
    expect(openPlan(savePlan(laterVisit(today, "Later"))).ok).toBe(true)
  })
  it("make a plan of their own, without what happened today", () => {
    const visit = laterVisit(
      { ...kept, alarms: [{ wallAt: "2026-03-09T10:00:00Z", what: "faint" }] },
      "Later",
    )
    expect(ids(visit)).toEqual([second, third])
    expect(visit.id).not.toBe(kept.id)
    expect(visit.name).toBe("Later")
    expect(visit).not.toHaveProperty("alarms")
    expect(openPlan(savePlan(visit)).ok).toBe(true)
  })
})
