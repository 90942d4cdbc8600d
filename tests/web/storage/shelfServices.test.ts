import "fake-indexeddb/auto"
import { openDB } from "idb"
import { beforeEach, describe, expect, it } from "vitest"
import { newId } from "../../../web/core/document/newId"
import { removePlan } from "../../../web/storage/bin"
import { keepPlan, openKept, openShelf, type Shelf } from "../../../web/storage/shelf"
import { keepService, readService } from "../../../web/storage/shelfServices"
import { samplePlan } from "../../support/samples"

let name: string
let shelf: Shelf
beforeEach(() => {
  name = `shelf ${newId()}`
  shelf = openShelf(name)
})
const service = (rev: string, taps: number) => ({
  planId: samplePlan.id,
  rev,
  running: true,
  value: { taps },
})

describe("a service at the chair", () => {
  it("is there after the page is loaded again", async () => {
    expect(await readService(shelf, samplePlan.id)).toBeUndefined()
    expect(await keepService(shelf, service("a", 1), new Set(["a"]))).toEqual({ state: "saved" })
    expect(await keepService(shelf, service("b", 2), new Set(["a", "b"]))).toEqual({ state: "saved" })
    expect(await readService(openShelf(name), samplePlan.id)).toEqual(service("b", 2))
  })
  it("is not written over by a window that has not seen the last of it", async () => {
    await keepService(shelf, service("theirs", 5), new Set(["theirs"]))
    const kept = await keepService(openShelf(name), service("mine", 1), new Set(["mine"]))
    expect(kept.state).toBe("not-saved")
    expect(await readService(shelf, samplePlan.id)).toEqual(service("theirs", 5))
  })
  it("goes when its plan goes, and comes back with it", async () => {
    await keepPlan(shelf, samplePlan)
    const ended = { ...service("a", 1), running: false }
    await keepService(shelf, ended, new Set(["a"]))
    const putBack = await removePlan(shelf, samplePlan.id)
    expect(await readService(shelf, samplePlan.id)).toBeUndefined()
    await putBack()
    expect(await readService(shelf, samplePlan.id)).toEqual(ended)
  })
  it("finds room on a shelf that was made before there were any", async () => {
    const old = await openDB(name, 1, {
      upgrade(database) {
        database.createObjectStore("plans", { keyPath: "id" })
        database.createObjectStore("aside")
        database.createObjectStore("settings")
      },
    })
    old.close()
    await keepPlan(shelf, samplePlan)
    expect(await keepService(shelf, service("a", 1), new Set(["a"]))).toEqual({ state: "saved" })
    expect(await openKept(shelf, samplePlan.id)).toEqual({ ok: true, plan: samplePlan })
  })
})
