import "fake-indexeddb/auto"
import { openDB } from "idb"
import { beforeEach, describe, expect, it } from "vitest"
import { newId } from "../../../web/core/document/newId"
import { listAside } from "../../../web/storage/aside"
import { removePlan } from "../../../web/storage/bin"
import {
  holds,
  keepPlan,
  openKept,
  openLast,
  openShelf,
  type Shelf,
  takeIn,
} from "../../../web/storage/shelf"
import { listPlans, renamePlan } from "../../../web/storage/shelfList"
import { emptyPlan, samplePlan } from "../../support/samples"

const saved = { state: "saved" }
let name: string
let shelf: Shelf
beforeEach(() => {
  name = `shelf ${newId()}`
  shelf = openShelf(name)
})

/** What is really in the database, seen past the shelf. */
async function stored(store: "plans" | "aside") {
  const database = await openDB(name)
  const all = await database.getAll(store)
  database.close()
  return all
}

describe("a plan that was kept", () => {
  it("is there for the next visit, and is the last one", async () => {
    expect(await keepPlan(shelf, samplePlan)).toEqual(saved)
    const later = openShelf(name)
    expect(await openKept(later, samplePlan.id)).toEqual({ ok: true, plan: samplePlan })
    expect(await openLast(later)).toEqual({ ok: true, plan: samplePlan })
  })
  it("is held as it is, not as it was", async () => {
    await keepPlan(shelf, samplePlan)
    expect(holds(shelf, samplePlan)).toBe(true)
    await keepPlan(shelf, { ...samplePlan, name: "Later" })
    expect(holds(shelf, samplePlan)).toBe(false)
  })
  it("is listed by what is told of it, the latest first", async () => {
    await keepPlan(shelf, { ...emptyPlan, id: "first", client: { initials: "AK" } })
    await new Promise((done) => setTimeout(done, 5))
    await keepPlan(shelf, { ...emptyPlan, id: "second", name: "Frame" })
    const [latest, earliest] = await listPlans(shelf)
    expect([latest.id, latest.name]).toEqual(["second", "Frame"])
    expect([earliest.id, earliest.initials]).toEqual(["first", "AK"])
  })
  it("takes another name", async () => {
    await keepPlan(shelf, samplePlan)
    expect(await renamePlan(shelf, samplePlan.id, "Halo")).toEqual(saved)
    expect((await listPlans(shelf))[0].name).toBe("Halo")
  })
  it("comes off the shelf, and back on", async () => {
    await keepPlan(shelf, samplePlan)
    const putBack = await removePlan(shelf, samplePlan.id)
    expect(await listPlans(shelf)).toEqual([])
    expect((await openKept(shelf, samplePlan.id)).ok).toBe(false)
    await putBack()
    expect((await openKept(shelf, samplePlan.id)).ok).toBe(true)
  })
  it("stays the later one of two written without waiting", async () => {
    await keepPlan(shelf, emptyPlan)
    const writes = ["One", "Two", "Three"].map((name) => keepPlan(shelf, { ...emptyPlan, name }))
    expect(await Promise.all(writes)).toEqual([saved, saved, saved])
    expect((await listPlans(shelf))[0].name).toBe("Three")
  })
})

describe("two tabs", () => {
  it("do not write over each other", async () => {
    await keepPlan(shelf, emptyPlan)
    const other = openShelf(name)
    await openKept(other, emptyPlan.id)
    expect(await keepPlan(other, { ...emptyPlan, name: "Theirs" })).toEqual(saved)
    const mine = await keepPlan(shelf, { ...emptyPlan, name: "Mine" })
    expect(mine.state === "not-saved" && mine.why).toEqual({ code: "changed-elsewhere" })
    expect((await stored("plans")).map((record) => record.name)).toEqual(["Theirs"])
    expect((await keepPlan(shelf, { ...emptyPlan, name: "Mine again" })).state).toBe("not-saved")
    expect(await keepPlan(other, { ...emptyPlan, name: "Theirs still" })).toEqual(saved)
  })
  it("may take turns when each reads first", async () => {
    await keepPlan(shelf, emptyPlan)
    const other = openShelf(name)
    await openKept(other, emptyPlan.id)
    await keepPlan(other, { ...emptyPlan, name: "Theirs" })
    await openKept(shelf, emptyPlan.id)
    expect(await keepPlan(shelf, { ...emptyPlan, name: "Mine" })).toEqual(saved)
  })
  it("do not bring back what the other took off the shelf", async () => {
    await keepPlan(shelf, emptyPlan)
    const other = openShelf(name)
    await removePlan(other, emptyPlan.id)
    const kept = await keepPlan(shelf, { ...emptyPlan, name: "Mine" })
    expect(kept.state === "not-saved" && kept.why).toEqual({ code: "removed-elsewhere" })
    expect(await stored("plans")).toEqual([])
  })
})

describe("a plan from a file", () => {
  it("is kept under its own id when that is free or holds the same plan", async () => {
    expect((await takeIn(shelf, samplePlan)).plan).toBe(samplePlan)
    expect((await takeIn(openShelf(name), samplePlan)).plan).toBe(samplePlan)
    expect((await stored("plans")).length).toBe(1)
  })
  it("stands beside another plan with its id", async () => {
    await keepPlan(shelf, { ...samplePlan, name: "Changed since" })
    const { plan, kept } = await takeIn(openShelf(name), samplePlan)
    expect(kept).toEqual(saved)
    expect(plan.id).not.toBe(samplePlan.id)
    expect((await stored("plans")).map((record) => record.name).sort()).toEqual(["Changed since", "Sample"])
  })
})

describe("what cannot be read", () => {
  const put = async (text: unknown) => {
    await keepPlan(shelf, emptyPlan)
    const database = await openDB(name)
    await database.put("plans", { ...(await database.get("plans", emptyPlan.id)), text })
    database.close()
  }
  for (const text of ["{", '{"kind":"partline-plan","version":1}', 7])
    it(`is set aside as it is: ${text}`, async () => {
      await put(text)
      expect((await openKept(openShelf(name), emptyPlan.id)).ok).toBe(false)
      expect(await stored("plans")).toEqual([])
      expect((await stored("aside")).map((record) => record.text)).toEqual([text])
      expect((await listAside(shelf)).length).toBe(1)
    })
  it("stays on the shelf when a newer Partline wrote it", async () => {
    await put('{"kind":"partline-plan","version":3}')
    const opened = await openKept(openShelf(name), emptyPlan.id)
    expect(!opened.ok && opened.problems[0].code).toBe("newer-version")
    expect((await stored("plans")).length).toBe(1)
    expect(await stored("aside")).toEqual([])
  })
})

describe("a connection that was cut", () => {
  it("is made again", async () => {
    await keepPlan(shelf, emptyPlan)
    await shelf.connection.run(async (database) => database.close())
    expect(await keepPlan(shelf, { ...emptyPlan, name: "After" })).toEqual(saved)
  })
  it("lets a newer Partline in another tab have the database", async () => {
    await keepPlan(shelf, emptyPlan)
    const newer = await openDB(name, 6)
    newer.close()
    const kept = await keepPlan(shelf, { ...emptyPlan, name: "Old" })
    expect(kept.state === "not-saved" && kept.why).toEqual({ code: "newer-shelf", what: "plan" })
  })
})
