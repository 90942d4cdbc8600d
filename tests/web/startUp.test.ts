import "fake-indexeddb/auto"
import { beforeEach, describe, expect, it } from "vitest"
import { newId } from "../../web/core/document/newId"
import { newPlan } from "../../web/core/document/newPlan"
import { exampleVisit } from "../../web/core/file/exampleVisit"
import { nowHere } from "../../web/session/nowHere"
import { createPlanStore, openInto, type PlanStore } from "../../web/session/planStore"
import { startUp } from "../../web/startUp"
import { removePlan } from "../../web/storage/bin"
import { keepPlan, openShelf, type Shelf } from "../../web/storage/shelf"
import { connect } from "../../web/storage/shelfDatabase"
import { listPlans } from "../../web/storage/shelfList"

let databaseName: string
let shelf: Shelf
let store: PlanStore
beforeEach(() => {
  databaseName = `start ${newId()}`
  shelf = openShelf(databaseName)
  store = createPlanStore(newPlan(new Date()))
})

const onScreen = () => store.getState().present

/** Until autosave has written, at most a second. */
async function untilKept(name: string) {
  for (let i = 0; i < 100; i++) {
    if ((await listPlans(openShelf(databaseName))).some((entry) => entry.name === name)) return true
    await new Promise((done) => setTimeout(done, 10))
  }
  return false
}

describe("the first start", () => {
  it("shows the finished example under an id of its own, and keeps it", async () => {
    await startUp(store, shelf)
    // Its answers and its day are of today; all else is the example as it is.
    const { id: _, date: __, consultation: ___, ...shown } = onScreen()
    const { id, date: ____, consultation: _____, ...example } = exampleVisit(nowHere())
    expect(shown).toEqual(example)
    expect(onScreen().id).not.toBe(id)
    expect(await untilKept(example.name)).toBe(true)
  })
  it("leaves what was drawn before the shelf had answered", async () => {
    const starting = startUp(store, shelf)
    openInto({ ...onScreen(), name: "Quick hand" }, store)
    await starting
    expect(onScreen().name).toBe("Quick hand")
    expect(await untilKept("Quick hand")).toBe(true)
  })
})

describe("a later start", () => {
  it("opens the last plan, and keeps what is changed in it", async () => {
    await keepPlan(openShelf(databaseName), { ...newPlan(new Date()), name: "Halo" })
    await startUp(store, shelf)
    expect(onScreen().name).toBe("Halo")
    openInto({ ...onScreen(), name: "Halo, higher" }, store)
    expect(await untilKept("Halo, higher")).toBe(true)
  })
  it("begins with an empty plan when the last one has gone", async () => {
    const plan = { ...newPlan(new Date()), name: "Halo" }
    await keepPlan(shelf, plan)
    await removePlan(shelf, plan.id)
    await startUp(store, shelf)
    expect([onScreen().name, onScreen().sections]).toEqual(["", []])
  })
})

it("leaves the app usable with the example when there is no database", async () => {
  const refuses = async () => {
    throw new DOMException("The operation is insecure.", "SecurityError")
  }
  const broken: Shelf = { ...shelf, connection: { ...connect(databaseName), run: refuses } }
  await startUp(store, broken)
  expect(onScreen().sections.length).toBeGreaterThan(0)
})
