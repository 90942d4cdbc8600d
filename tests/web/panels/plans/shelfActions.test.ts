import { en } from "../../../support/words"
import "fake-indexeddb/auto"
import { beforeEach, describe, expect, it } from "vitest"
import { newId } from "../../../../web/core/document/newId"
import { newPlan } from "../../../../web/core/document/newPlan"
import type { Plan } from "../../../../web/core/document/schema"
import { savePlan } from "../../../../web/core/file/planFile"
import {
  copyName,
  type Desk,
  duplicate,
  openFromFile,
  openFromShelf,
  remove,
  rename,
} from "../../../../web/panels/plans/shelfActions"
import { createPlanStore, openInto } from "../../../../web/session/planStore"
import { wordsHere } from "../../../../web/session/words"
import { keepPlan, openLast, openShelf } from "../../../../web/storage/shelf"
import { listPlans, lookAtPlan } from "../../../../web/storage/shelfList"

const named = (name: string): Plan => ({ ...newPlan(new Date()), name })
const [halo, frame] = [named("Halo"), named("Frame")]

await wordsHere()

/** The clock of the shelf goes on by a millisecond at least. */
const later = () => new Promise((done) => setTimeout(done, 3))

let desk: Desk
beforeEach(async () => {
  desk = { store: createPlanStore(halo), shelf: openShelf(`desk ${newId()}`) }
  await keepPlan(desk.shelf, frame)
  await later()
  await keepPlan(desk.shelf, halo)
})

const onScreen = () => desk.store.getState().present
const namesOnShelf = async () => (await listPlans(desk.shelf)).map(({ name }) => name).sort()
const lastName = async () => {
  const last = await openLast(desk.shelf)
  return last.ok ? last.plan.name : null
}

describe("a plan of the shelf", () => {
  it("comes to the screen with a history of its own", async () => {
    openInto({ ...halo, note: "changed" }, desk.store)
    expect((await openFromShelf(desk, frame.id)).ok).toBe(true)
    expect(onScreen()).toEqual(frame)
    expect(desk.store.getState().past).toEqual([])
  })
  it("that is not there leaves the screen as it was", async () => {
    expect((await openFromShelf(desk, "nowhere")).ok).toBe(false)
    expect(onScreen()).toBe(halo)
  })
  it("gets a twin, which comes to the screen and is the one to come back to", async () => {
    expect(await duplicate(desk, frame.id)).toEqual({ state: "saved" })
    expect(await namesOnShelf()).toEqual(["Frame", "Frame copy", "Halo"])
    expect(onScreen().name).toBe("Frame copy")
    expect(await lastName()).toBe("Frame copy")
  })
  it("stands first in the list once it is opened, without being written again", async () => {
    const before = await listPlans(desk.shelf)
    expect(before.map(({ name }) => name)).toEqual(["Halo", "Frame"])
    await later()
    await openFromShelf(desk, frame.id)
    const after = await listPlans(desk.shelf)
    expect(after.map(({ name }) => name)).toEqual(["Frame", "Halo"])
    expect(after[0].savedAt).toBe(before[1].savedAt)
  })
  it("is looked at without becoming the last one", async () => {
    expect(await lookAtPlan(desk.shelf, frame.id)).toEqual(frame)
    expect(await lookAtPlan(desk.shelf, "nowhere")).toBeNull()
    expect(await lastName()).toBe("Halo")
  })
  it("takes another name where it lies", async () => {
    await rename(desk, frame.id, "Soft frame")
    expect(await namesOnShelf()).toEqual(["Halo", "Soft frame"])
    expect(await lastName()).toBe("Halo")
  })
})

describe("a plan taken off the shelf", () => {
  it("comes back by undo", async () => {
    const undo = await remove(desk, frame.id)
    expect(await namesOnShelf()).toEqual(["Halo"])
    await undo()
    expect(await namesOnShelf()).toEqual(["Frame", "Halo"])
    expect(onScreen()).toBe(halo)
  })
  it("gives the screen to the next, and takes it again by undo", async () => {
    const undo = await remove(desk, halo.id)
    expect(onScreen().name).toBe("Frame")
    await undo()
    expect(onScreen().name).toBe("Halo")
  })
  it("leaves an empty plan when it was the last", async () => {
    await remove(desk, frame.id)
    await remove(desk, halo.id)
    expect(onScreen().sections).toEqual([])
    expect([halo.id, frame.id]).not.toContain(onScreen().id)
  })
})

describe("a plan from a file", () => {
  it("comes to the screen and to the shelf", async () => {
    const opened = await openFromFile(desk, new Blob([savePlan(named("From afar"))]))
    expect(opened.ok).toBe(true)
    expect(onScreen().name).toBe("From afar")
    expect(await namesOnShelf()).toContain("From afar")
  })
  it("with problems names them all and changes nothing", async () => {
    const broken = savePlan(halo)
      .replace('"date": ', '"date": "soon", "was": ')
      .replace('"round"', '"square"')
    const opened = await openFromFile(desk, new Blob([broken]))
    expect(opened.ok ? [] : opened.problems.map(({ path }) => path).sort()).toEqual([
      "date",
      "head.hairline.form",
      "was",
    ])
    expect(onScreen()).toBe(halo)
    expect(await namesOnShelf()).toEqual(["Frame", "Halo"])
  })
  it("that is far too large is not read", async () => {
    const large = new Blob([new Uint8Array(21 * 1024 * 1024)])
    const opened = await openFromFile(desk, large)
    expect(opened.ok ? "" : en.problems.sentence(opened.problems[0])).toContain("found 21 MB")
  })
})

it("names a copy within the length of a name", () => {
  expect(copyName("Halo")).toBe("Halo copy")
  expect(copyName("")).toBe("Copy")
  expect(copyName("x".repeat(80))).toHaveLength(80)
})
