import { describe, expect, it } from "vitest"
import { undoLabel } from "../../../web/core/document/history"
import { moveSections } from "../../../web/core/edits/parting/moveSections"
import { setPlanDetails } from "../../../web/core/edits/plan/setPlanDetails"
import { removeSections } from "../../../web/core/edits/sections/removeSections"
import { createPlanStore, edit, openInto, redo, undo } from "../../../web/session/planStore"
import { sessionStore } from "../../../web/session/sessionStore"
import { emptyPlan, samplePlan } from "../../support/samples"

const deleted = { chapter: "placement", code: "delete", count: 1 } as const
const renamed = { chapter: "plans", code: "rename" } as const

describe("the open plan", () => {
  it("is drawn on the map as it opens, whatever hair lay over the one before", () => {
    sessionStore.setState({ isFalling: true })
    openInto(emptyPlan, createPlanStore(samplePlan))
    expect(sessionStore.getState().isFalling).toBe(false)
  })

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
