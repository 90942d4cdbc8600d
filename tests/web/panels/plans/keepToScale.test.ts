import "fake-indexeddb/auto"
import { beforeEach, describe, expect, it } from "vitest"
import { undoLabel } from "../../../../web/core/document/history"
import { newId } from "../../../../web/core/document/newId"
import type { Plan } from "../../../../web/core/document/schema"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import type { KeptWeighing } from "../../../../web/core/weighing/salonRecord"
import { keepToScale } from "../../../../web/panels/plans/keepToScale"
import { createPlanStore, openInto, type PlanStore, undo } from "../../../../web/session/planStore"
import { changeSalon } from "../../../../web/session/salon/salonShelf"
import { openShelf, type Shelf } from "../../../../web/storage/shelf"

/** Bowls that agree, of a salon that takes a fifth more than the starting figures. */
const weighings = Array.from({ length: 12 }, (_, i): KeptWeighing => {
  const need = { panels: 4 + (i % 5), hairG: 4 + ((3 * i) % 7), strandAreaCm2: 1500 + 400 * ((2 * i) % 5) }
  const productG = 1.2 * (0.3 * need.panels + 2 * need.hairG + 0.003 * need.strandAreaCm2)
  return {
    id: `w${i}`,
    weighedAt: "2026-03-09T10:00:00Z",
    name: `Bowl ${i + 1}`,
    product: "House powder (invented)",
    kind: null,
    ...need,
    productG,
    leftOut: false,
  }
})

let shelf: Shelf
let store: PlanStore
beforeEach(() => {
  shelf = openShelf(`scale ${newId()}`)
  store = createPlanStore({ ...examplePlan(), id: "first" })
})
const learntNow = () => store.getState().present.salon?.learnt ?? []
async function opened(plan: Plan) {
  openInto(plan, store)
  await new Promise((done) => setTimeout(done, 60))
}

describe("a plan that comes to the screen", () => {
  it("goes by what the scale has taught, as one change that one undo takes back", async () => {
    await changeSalon((salon) => ({ ...salon, weighings }), shelf)
    keepToScale(store, shelf)
    await opened({ ...examplePlan(), id: "second" })
    expect(learntNow()[0]).toMatchObject({ product: null, kind: null, weighings: 12 })
    expect(undoLabel(store.getState())).toEqual({ chapter: "plans", code: "follow-scale" })
    undo(store)
    expect(learntNow()).toEqual([])
  })

  it("stays as it is where nothing was weighed, or its service has been done", async () => {
    keepToScale(store, shelf)
    const plain = { ...examplePlan(), id: "third" }
    await opened(plain)
    expect(store.getState().present).toBe(plain)
    await changeSalon((salon) => ({ ...salon, weighings }), shelf)
    const service = {} as NonNullable<Plan["service"]>
    await opened({ ...plain, id: "fourth", service })
    expect(learntNow()).toEqual([])
  })
})
