import "fake-indexeddb/auto"
import { beforeEach, describe, expect, it } from "vitest"
import { createStore } from "zustand/vanilla"
import { newId } from "../../../web/core/document/newId"
import { setPlanDetails } from "../../../web/core/edits/plan/setPlanDetails"
import { startAutosave } from "../../../web/session/autosave"
import { createPlanStore, edit, openInto, type PlanStore, undo } from "../../../web/session/planStore"
import type { SaveStatus } from "../../../web/session/saveStatus"
import { keepPlan, openKept, openShelf, type Shelf } from "../../../web/storage/shelf"
import { listPlans } from "../../../web/storage/shelfList"
import { emptyPlan } from "../../support/samples"

let name: string
let shelf: Shelf
let store: PlanStore
const status = createStore<SaveStatus>(() => ({ state: "saved" }))
const settled = () =>
  new Promise<SaveStatus>((done) => {
    const look = () => (status.getState().state === "saving" ? setTimeout(look, 1) : done(status.getState()))
    look()
  })
const rename = (to: string) =>
  edit({ chapter: "plans", code: "rename" }, setPlanDetails({ name: to }), null, store)
const keptName = async () => (await listPlans(shelf))[0]?.name

beforeEach(() => {
  name = `autosave ${newId()}`
  shelf = openShelf(name)
  store = createPlanStore(emptyPlan)
  startAutosave(store, shelf, status)
})

describe("autosave", () => {
  it("says saving in the same tick and saved when it is on the disk", async () => {
    rename("Frame")
    expect(status.getState()).toEqual({ state: "saving" })
    expect(await settled()).toEqual({ state: "saved" })
    expect(await keptName()).toBe("Frame")
  })
  it("keeps what undo brings back", async () => {
    rename("Frame")
    rename("Halo")
    undo(store)
    await settled()
    expect(await keptName()).toBe("Frame")
  })
  it("writes nothing for a plan that only came off the shelf", async () => {
    await keepPlan(shelf, { ...emptyPlan, id: "other" })
    const [before] = await listPlans(shelf)
    const opened = await openKept(shelf, "other")
    if (opened.ok) openInto(opened.plan, store)
    expect(status.getState()).toEqual({ state: "saved" })
    expect(await listPlans(shelf)).toEqual([before])
  })
  it("says why when another tab was there first", async () => {
    rename("Frame")
    await settled()
    const other = openShelf(name)
    await openKept(other, emptyPlan.id)
    await keepPlan(other, { ...emptyPlan, name: "Theirs" })
    rename("Mine")
    const said = await settled()
    expect(said.state === "not-saved" && said.why).toEqual({ code: "changed-elsewhere" })
    expect(await keptName()).toBe("Theirs")
  })
})
