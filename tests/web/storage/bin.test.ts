import "fake-indexeddb/auto"
import { openDB } from "idb"
import { beforeEach, describe, expect, it } from "vitest"
import { newId } from "../../../web/core/document/newId"
import { forgetAside, listAside, retryAside } from "../../../web/storage/aside"
import { emptyBin, listBin, putBack, removePlan } from "../../../web/storage/bin"
import { NotKeptError } from "../../../web/storage/notKept"
import { keepPlan, openKept, openShelf, type Shelf } from "../../../web/storage/shelf"
import { listPlans, lookAtPlans } from "../../../web/storage/shelfList"
import { keepService, readService } from "../../../web/storage/shelfServices"
import { processorMs } from "../../support/processorMs"
import { emptyPlan, samplePlan } from "../../support/samples"

let name: string
let shelf: Shelf
beforeEach(() => {
  name = `bin ${newId()}`
  shelf = openShelf(name)
})

const service = (running: boolean) => ({ planId: samplePlan.id, rev: "r1", running, value: { any: 1 } })

describe("a deleted plan", () => {
  it("lies in the bin with its service and comes back with it, for a later visit too", async () => {
    await keepPlan(shelf, samplePlan)
    await keepService(shelf, service(false), new Set())
    await removePlan(shelf, samplePlan.id)
    expect(await listPlans(shelf)).toEqual([])
    expect(await readService(shelf, samplePlan.id)).toBeUndefined()
    const later = openShelf(name)
    expect((await listBin(later)).map(({ id }) => id)).toEqual([samplePlan.id])
    await putBack(later, samplePlan.id)
    expect(await openKept(later, samplePlan.id)).toEqual({ ok: true, plan: samplePlan })
    expect(await readService(later, samplePlan.id)).toEqual(service(false))
    expect(await listBin(later)).toEqual([])
  })

  it("comes back beside another that has its id by now", async () => {
    await keepPlan(shelf, samplePlan)
    await removePlan(shelf, samplePlan.id)
    await keepPlan(openShelf(name), { ...samplePlan, name: "Another" })
    await putBack(openShelf(name), samplePlan.id)
    const names = (await listPlans(shelf)).map((entry) => entry.name)
    expect(names.sort()).toEqual(["Another", "Sample"])
  })

  it("is erased after 30 days, and not a day before", async () => {
    await keepPlan(shelf, samplePlan)
    await removePlan(shelf, samplePlan.id)
    const day = 86_400_000
    await emptyBin(shelf, Date.now() + 29 * day)
    expect(await listBin(shelf)).toHaveLength(1)
    await emptyBin(shelf, Date.now() + 31 * day)
    expect(await listBin(shelf)).toEqual([])
  })

  it("is never one whose service is going on", async () => {
    await keepPlan(shelf, samplePlan)
    await keepService(shelf, service(true), new Set())
    await expect(removePlan(shelf, samplePlan.id)).rejects.toThrow(NotKeptError)
    expect(await listPlans(shelf)).toHaveLength(1)
    expect(await readService(shelf, samplePlan.id)).toEqual(service(true))
  })
})

describe("what was set aside", () => {
  it("comes back once it can be read, and leaves the others where they are", async () => {
    await keepPlan(shelf, samplePlan)
    const database = await openDB(name)
    const good = await database.get("plans", samplePlan.id)
    await database.put("plans", { ...good, text: "{" })
    await openKept(shelf, samplePlan.id)
    const [aside] = await listAside(shelf)
    expect(aside).toMatchObject({ name: "Sample", text: "{" })
    await database.put("aside", good, aside.key)
    await database.put("aside", { ...good, id: "lost", text: "[" }, "lost 1")
    expect(await retryAside(shelf)).toBe(1)
    expect(await openKept(shelf, samplePlan.id)).toEqual({ ok: true, plan: samplePlan })
    expect((await listAside(shelf)).map(({ key }) => key)).toEqual(["lost 1"])
    await forgetAside(shelf, "lost 1")
    expect(await listAside(shelf)).toEqual([])
    database.close()
  })
})

describe("a shelf that is not to be written in", () => {
  it("shows its plans where a newer Partline has made it", async () => {
    await keepPlan(shelf, samplePlan)
    shelf.connection.close()
    const newer = await openDB(name, 9)
    newer.close()
    const old = openShelf(name)
    await expect(listPlans(old)).rejects.toThrow()
    expect((await lookAtPlans(old)).map((record) => record.name)).toEqual(["Sample"])
  })

  it("shows its plans while another window holds an older one open", async () => {
    const held = await openDB(name, 3, {
      upgrade(database) {
        database.createObjectStore("plans", { keyPath: "id" })
        for (const store of ["aside", "settings"]) database.createObjectStore(store)
        database.createObjectStore("services", { keyPath: "planId" })
        database.createObjectStore("techniques", { keyPath: "id" })
      },
    })
    const record = {
      id: "p",
      rev: "1",
      savedAt: "2026-03-09T10:00:00Z",
      name: "Old",
      initials: "",
      text: "{}",
    }
    await held.put("plans", record)
    await held.put("plans", { id: "odd" })
    await expect(listPlans(shelf)).rejects.toMatchObject({ name: "BlockedError" })
    expect(await lookAtPlans(shelf)).toEqual([record])
    held.close()
    const later = openShelf(name)
    expect((await listPlans(later)).map(({ id }) => id)).toEqual(["p"])
    expect((await listAside(later)).map(({ text }) => JSON.parse(text))).toEqual([{ id: "odd" }])
  })
})

describe("5,000 plans", () => {
  it("are listed, and one is deleted, in under 0.2 s each", async () => {
    await keepPlan(shelf, emptyPlan)
    const text = "x".repeat(9_400)
    await shelf.connection.run(async (database) => {
      const transaction = database.transaction(["plans", "entries"], "readwrite")
      for (let i = 0; i < 5000; i++) {
        const entry = { id: `p${i}`, name: `Plan ${i}`, initials: "", savedAt: "2026-03-09T10:00:00Z" }
        void transaction.objectStore("plans").put({ ...entry, rev: `${i}`, text })
        void transaction.objectStore("entries").put({ ...entry, served: false, day: null, upkeepWeeks: null })
      }
      await transaction.done
    })
    expect(await processorMs(() => listPlans(shelf))).toBeLessThan(200)
    expect(await processorMs(() => removePlan(shelf, "p2500"))).toBeLessThan(200)
    expect(await listPlans(shelf)).toHaveLength(5000)
  }, 60_000)
})
