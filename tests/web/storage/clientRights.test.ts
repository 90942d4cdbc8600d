import "fake-indexeddb/auto"
import { openDB } from "idb"
import { beforeEach, describe, expect, it } from "vitest"
import { newCard } from "../../../web/core/cards/card"
import { writeClient } from "../../../web/core/cards/clientFile"
import { newId } from "../../../web/core/document/newId"
import { listBin, removePlan } from "../../../web/storage/bin"
import { keepCard } from "../../../web/storage/cards"
import { putOnCard } from "../../../web/storage/cardVisits"
import { eraseClient, exportClient, rightsLog } from "../../../web/storage/clientRights"
import { NotKeptError } from "../../../web/storage/notKept"
import { keepPlan, openShelf, type Shelf } from "../../../web/storage/shelf"
import { listPlans } from "../../../web/storage/shelfList"
import { keepService } from "../../../web/storage/shelfServices"
import { emptyPlan, samplePlan } from "../../support/samples"

const at = "2026-03-09T10:00:00.000Z"
const known = ["Quillfeather", "nickelworks", "teapot note", "0123-98765", "March plan", "Binned plan", "QF"]
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
  database.close()
})

describe("erasing one client", () => {
  it("leaves nothing of them in any store, and everything of the others", async () => {
    for (const each of known) expect(await everything()).toContain(each)
    expect([...(await eraseClient(shelf, "qf", at))].sort()).toEqual(["binned", "march"])
    const left = await everything()
    for (const each of known) expect(left).not.toContain(each)
    expect((await listPlans(shelf)).map(({ id }) => id)).toEqual(["other"])
    expect(await listBin(shelf)).toEqual([])
    expect(await rightsLog(shelf)).toEqual([{ what: "erased", at, plans: 2 }])
  })

  it("does not happen while a service is going on, and then takes nothing", async () => {
    await keepService(shelf, { planId: "march", rev: "2", running: true, value: "" }, new Set(["1"]))
    const before = await everything()
    const refused = await eraseClient(shelf, "qf", at).catch((error) => error)
    expect(refused instanceof NotKeptError && refused.why).toEqual({ code: "service-running" })
    expect(await everything()).toBe(before)
  })
})

describe("exporting one client", () => {
  it("gives the card and every plan on it, and logs that it did, not of whom", async () => {
    const made = await exportClient(shelf, "qf", at)
    if (!made) throw new Error("there is a card")
    const text = writeClient(made)
    for (const each of known) expect(text).toContain(each)
    expect(text).not.toContain("Another client")
    expect(
      JSON.parse(text)
        .plans.map(({ id }: { id: string }) => id)
        .sort(),
    ).toEqual(["binned", "march"])
    expect(await rightsLog(shelf)).toEqual([{ what: "exported", at, plans: 2 }])
    expect(await exportClient(shelf, "nobody", at)).toBeNull()
  })
})
