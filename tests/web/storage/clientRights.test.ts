import "fake-indexeddb/auto"
import { openDB } from "idb"
import { beforeEach, describe, expect, it } from "vitest"
import { newCard } from "../../../web/core/cards/card"
import { writeClient } from "../../../web/core/cards/clientFile"
import { newId } from "../../../web/core/document/newId"
import { emptySalonShelf, readSalonShelf } from "../../../web/core/weighing/salonRecord"
import { eraseForGood, lookThroughClient, takeInClient } from "../../../web/session/cards/clientRights"
import { createPlanStore } from "../../../web/session/planStore"
import { listAside } from "../../../web/storage/aside"
import { listBin, removePlan } from "../../../web/storage/bin"
import { keepCard } from "../../../web/storage/cards"
import { putOnCard, visitsOf } from "../../../web/storage/cardVisits"
import { eraseClient, noteRight, plansOnCard, readClient, rightsLog } from "../../../web/storage/clientRights"
import { NotKeptError } from "../../../web/storage/notKept"
import { changeRetention, readRetention } from "../../../web/storage/retention"
import { keepPlan, openKept, openShelf, type Shelf } from "../../../web/storage/shelf"
import { listPlans, readSetting } from "../../../web/storage/shelfList"
import { keepService } from "../../../web/storage/shelfServices"
import { emptyPlan, samplePlan } from "../../support/samples"

const at = "2026-03-09T10:00:00.000Z"
const on = "2026-03-09"
const weighing = {
  weighedAt: at,
  product: "House lightener",
  kind: null,
  panels: 2,
  hairG: 3,
  strandAreaCm2: 120,
  productG: 20,
  leftOut: false,
}
/** One says which plan it is of, though that went by another name then; two name it alone; one is of another client. */
const weighings = [
  { ...weighing, id: "w1", name: "9 March 2026, March plan, bowl A" },
  { ...weighing, id: "w2", name: "9 March 2026, Teaspoon plan, bowl B", planId: "march" },
  { ...weighing, id: "w3", name: "10 March 2026, Binned plan, bowl A" },
  { ...weighing, id: "w4", name: "11 March 2026, Marching, bowl A", planId: "other" },
]
const known = [
  "Quillfeather",
  "nickelworks",
  "teapot note",
  "0123-98765",
  "March plan",
  "Binned plan",
  "Teaspoon plan",
  "QF",
  '"qf',
]
let name: string
let shelf: Shelf

/** Every byte the database holds, as text. */
async function everything() {
  const database = await openDB(name)
  const stores = [...database.objectStoreNames]
  const all = await Promise.all(
    stores.map(async (store) => [await database.getAllKeys(store), await database.getAll(store)]),
  )
  database.close()
  return JSON.stringify(all)
}

beforeEach(async () => {
  name = `rights ${newId()}`
  shelf = openShelf(name)
  const card = {
    ...newCard("qf", "Quillfeather"),
    allergies: [{ kind: "other" as const, to: "nickelworks", since: "" }],
    note: "teapot note",
    phone: "0123-98765",
  }
  await keepCard(shelf, card, null)
  await keepPlan(shelf, { ...samplePlan, id: "march", name: "March plan", client: { initials: "QF" } })
  await keepPlan(shelf, { ...samplePlan, id: "binned", name: "Binned plan" })
  await keepPlan(shelf, { ...emptyPlan, id: "other", name: "Another client's" })
  await putOnCard(shelf, "march", "qf")
  await putOnCard(shelf, "binned", "qf")
  await keepService(shelf, { planId: "march", rev: "1", running: false, value: "March plan" }, new Set())
  await removePlan(shelf, "binned")
  const database = await openDB(name)
  await database.put("aside", "March plan, as it was", "march unlisted")
  await database.put("aside", { text: "Quillfeather, as it was" }, "qf unlisted")
  await database.put("settings", { ...emptySalonShelf(), weighings }, "salon")
  await database.put(
    "settings",
    [{ field: "weighings", value: { ...weighings[0], hairG: "?" } }],
    "salon-aside",
  )
  database.close()
  await changeRetention(shelf, () => ({ years: 5, stays: { qf: on } }))
})

describe("erasing one client", () => {
  it("leaves nothing of them in any store, and everything of the others", async () => {
    for (const each of known) expect(await everything()).toContain(each)
    expect([...(await eraseClient(shelf, "qf", on))].sort()).toEqual(["binned", "march"])
    const left = await everything()
    for (const each of known) expect(left).not.toContain(each)
    expect((await listPlans(shelf)).map(({ id }) => id)).toEqual(["other"])
    expect(await listBin(shelf)).toEqual([])
    expect(await readRetention(shelf)).toEqual({ years: 5, stays: {} })
    expect(await rightsLog(shelf)).toEqual([{ what: "erased", on, plans: 2 }])
  })

  it("does not happen while a service is going on, and then takes nothing", async () => {
    await keepService(shelf, { planId: "march", rev: "2", running: true, value: "" }, new Set(["1"]))
    const before = await everything()
    const refused = await eraseClient(shelf, "qf", on).catch((error) => error)
    expect(refused instanceof NotKeptError && refused.why).toEqual({ code: "service-running" })
    expect(await everything()).toBe(before)
  })
})

it("keeps what the bowls taught, without whose they were", async () => {
  await eraseClient(shelf, "qf", on)
  const { weighings: left } = readSalonShelf(await readSetting(shelf, "salon")).salon
  expect(left.map(({ name, productG, planId }) => [name, productG, planId])).toEqual([
    ["9 March 2026, …, bowl A", 20, undefined],
    ["…", 20, undefined],
    ["10 March 2026, …, bowl A", 20, undefined],
    ["11 March 2026, Marching, bowl A", 20, "other"],
  ])
})

describe("handing out one client", () => {
  it("gives the card and every plan on it, those in the bin and those not read too, and nobody else's", async () => {
    const made = await readClient(shelf, "qf", at)
    if (!made) throw new Error("there is a card")
    const text = writeClient(made)
    for (const each of ["Quillfeather", "nickelworks", "teapot note", "0123-98765", "QF"])
      expect(text).toContain(each)
    expect(text).not.toContain("Another client")
    const plans: unknown[] = JSON.parse(text).plans
    expect(
      plans.map((plan) => (typeof plan === "string" ? plan : (plan as { id: string }).id)).sort(),
    ).toEqual(["March plan, as it was", "binned", "march"])
    expect(await plansOnCard(shelf, "qf")).toBe(2)
    expect(await readClient(shelf, "nobody", at)).toBeNull()
  })

  it("is read back on another device just as it was, and again changes nothing", async () => {
    const made = await readClient(shelf, "qf", at)
    if (!made) throw new Error("there is a card")
    const file = new Blob([writeClient(made)])
    const there = openShelf(`there ${newId()}`)
    for (const counts of [
      { added: 2, cards: 1 },
      { added: 0, cards: 0 },
    ]) {
      const looked = await lookThroughClient(file, there)
      if (!looked.ok) throw new Error(looked.problem.code)
      const { added, cards, beside } = looked.restoring
      expect({ added: added.length, cards: cards.length, beside }).toEqual({ ...counts, beside: [] })
      await takeInClient(looked.restoring, there)
    }
    const again = await readClient(there, "qf", at)
    expect(again?.card).toEqual(made.card)
    expect((await visitsOf(there, "qf")).map(({ planId }) => planId).sort()).toEqual(["binned", "march"])
    expect(await openKept(there, "march")).toEqual(await openKept(shelf, "march"))
  })

  it("brings a plan that cannot be read along, and erases it with the rest", async () => {
    const unread = { kind: "partline-plan", version: 99, id: "later", name: "Teapot of tomorrow" }
    const card = newCard("qf", "Quillfeather")
    const there = openShelf(`there ${newId()}`)
    const looked = await lookThroughClient(
      new Blob([writeClient({ madeAt: at, card, plans: [JSON.stringify(unread)] })]),
      there,
    )
    if (!looked.ok) throw new Error(looked.problem.code)
    await takeInClient(looked.restoring, there)
    expect((await listAside(there)).map((each) => each.name)).toEqual(["Teapot of tomorrow"])
    await eraseClient(there, "qf", on)
    expect(await listAside(there)).toEqual([])
  })

  it("takes no other file for a client's", async () => {
    for (const [text, code] of [
      ["", "empty"],
      ["{", "not-json"],
      ['{"kind":"partline-plan","version":2}', "another-kind"],
      ['{"kind":"partline-client","version":2}', "newer-version"],
      ['{"kind":"partline-client","version":1,"plans":7}', "not-json"],
      ['{"kind":"partline-client","version":1,"card":{},"plans":[]}', "another-kind"],
    ]) {
      const looked = await lookThroughClient(new Blob([text]), shelf)
      expect(!looked.ok && looked.problem.code, text).toBe(code)
    }
  })
})

it("logs a day and a count, never of whom, and two windows lose nothing of each other's", async () => {
  const entry = { what: "exported" as const, on, plans: 2 }
  await Promise.all([noteRight(shelf, entry), noteRight(openShelf(name), entry)])
  expect(await rightsLog(shelf)).toEqual([entry, entry])
})

it("moves on to another plan where the one on the screen goes, and forgets what was copied", async () => {
  const store = createPlanStore({ ...samplePlan, id: "march" })
  await eraseForGood("qf", { store, shelf })
  expect(store.getState().present.id).toBe("other")
  expect(await everything()).not.toContain('"march"')
})
