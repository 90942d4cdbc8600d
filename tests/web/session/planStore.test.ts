import { describe, expect, it } from "vitest"
import { newConsultation } from "../../../web/core/document/consultation"
import { undoLabel } from "../../../web/core/document/history"
import { moveSections } from "../../../web/core/edits/parting/moveSections"
import { answerQuestions } from "../../../web/core/edits/plan/answerQuestions"
import { setPlanDetails } from "../../../web/core/edits/plan/setPlanDetails"
import { removeSections } from "../../../web/core/edits/sections/removeSections"
import { keepStops } from "../../../web/session/clearance/keepStops"
import { nowHere } from "../../../web/session/nowHere"
import { createPlanStore, edit, openInto, redo, undo } from "../../../web/session/planStore"
import { emptyPlan, samplePlan } from "../../support/samples"

const deleted = { chapter: "placement", code: "delete", count: 1 } as const
const renamed = { chapter: "plans", code: "rename" } as const

describe("the open plan", () => {
  it("changes by edits under the words of the menu, back and forth", () => {
    const store = createPlanStore(samplePlan)
    expect(edit(deleted, removeSections("s2"), null, store)).toBeNull()
    expect(undoLabel(store.getState())).toBe(deleted)
    expect(store.getState().present.sections.length).toBe(3)
    undo(store)
    expect(store.getState().present).toBe(samplePlan)
    redo(store)
    expect(store.getState().present.sections.length).toBe(3)
  })
  it("stays as it is when an edit is refused, and the reason is given", () => {
    const store = createPlanStore(samplePlan)
    const refused = edit(renamed, moveSections(["s1"], { alongMm: 0, behindMm: -90 }), null, store)
    expect(refused?.refused).toMatchObject({
      code: "section-problem",
      section: { code: "foil", number: 1 },
    })
    expect(store.getState().present).toBe(samplePlan)
    expect(undoLabel(store.getState())).toBeNull()
  })
  it("takes nudges of one foil back together", () => {
    const store = createPlanStore(samplePlan)
    const nudge = () => edit(renamed, moveSections(["s1"], { alongMm: 1, behindMm: 0 }), "move s1", store)
    nudge()
    nudge()
    nudge()
    undo(store)
    expect(store.getState().present).toBe(samplePlan)
  })
  it("has a history of its own when another is opened", () => {
    const store = createPlanStore(samplePlan)
    edit(renamed, setPlanDetails({ name: "Halo" }), null, store)
    openInto(emptyPlan, store)
    undo(store)
    expect(store.getState().present).toBe(emptyPlan)
  })
})

describe("an answer that stopped the plan, taken back by undo", () => {
  keepStops()
  const answered = { chapter: "client", code: "answer" } as const
  const yes = () => answerQuestions(["breathingReaction"], "yes", nowHere())
  const linesOf = (store: ReturnType<typeof createPlanStore>) =>
    (store.getState().present.consultation?.withdrawn ?? []).map(({ rule, by }) => [rule, by])
  const line = ["breathing-reaction", "M."]

  it("leaves a line with the name of who asked, which no further undo and no redo takes out", () => {
    const store = createPlanStore({ ...samplePlan, consultation: { ...newConsultation(), askedBy: "M." } })
    edit(renamed, setPlanDetails({ name: "Halo" }), null, store)
    edit(answered, yes(), null, store)
    undo(store)
    expect(store.getState().present.consultation?.answers.breathingReaction).toBeUndefined()
    expect(linesOf(store)).toEqual([line])
    undo(store)
    expect(store.getState().present.name).toBe(samplePlan.name)
    expect(linesOf(store)).toEqual([line])
    redo(store)
    redo(store)
    expect(store.getState().present.consultation?.answers.breathingReaction?.said).toBe("yes")
    expect(linesOf(store)).toEqual([line])
  })
  it("leaves it also where the consultation began with that answer", () => {
    const store = createPlanStore(samplePlan)
    edit(answered, yes(), null, store)
    undo(store)
    expect(linesOf(store)).toEqual([["breathing-reaction", ""]])
  })
  it("leaves none where the answer stopped nothing, or the step was of something else", () => {
    const store = createPlanStore(samplePlan)
    edit(answered, answerQuestions(["lenses"], "yes", nowHere()), null, store)
    edit(deleted, removeSections("s2"), null, store)
    undo(store)
    undo(store)
    expect(store.getState().present).toBe(samplePlan)
  })
})
