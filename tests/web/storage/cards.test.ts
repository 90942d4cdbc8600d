import "fake-indexeddb/auto"
import { openDB } from "idb"
import { beforeEach, describe, expect, it } from "vitest"
import { newCard } from "../../../web/core/cards/card"
import { newId } from "../../../web/core/document/newId"
import { erase, putBack, removePlan } from "../../../web/storage/bin"
import { addCards, keepCard, listCards, readCard } from "../../../web/storage/cards"
import {
  cardOfPlan,
  keepMerged,
  listVisits,
  putOnCard,
  putOnSameCard,
  removeCard,
  visitsOf,
} from "../../../web/storage/cardVisits"
import { NotKeptError } from "../../../web/storage/notKept"
import { toRecord } from "../../../web/storage/planRecord"
import { keepPlan, openShelf, type Shelf } from "../../../web/storage/shelf"
import { listPlans } from "../../../web/storage/shelfList"
import { emptyPlan, samplePlan } from "../../support/samples"
import { servedPlan } from "../../support/servedPlan"

let name: string
let shelf: Shelf
beforeEach(() => {
  name = `cards ${newId()}`
  shelf = openShelf(name)
})

const ada = newCard("ada", "Ada")
const zoe = newCard("zoe", "Zoë")
const codeOf = (error: unknown) => (error instanceof NotKeptError ? error.why.code : error)

describe("a card", () => {
  it("is there for the next visit, and in the list", async () => {
    await keepCard(shelf, ada, null)
    const later = openShelf(name)
    expect(await readCard(later, "ada")).toMatchObject({ ok: true, kept: { card: ada } })
    expect(await listCards(later)).toEqual([{ id: "ada", name: "Ada", colour: "none", phone: "" }])
    expect(await readCard(later, "nobody")).toBeNull()
  })

  it("is not written over by a window that has not seen the latest", async () => {
    const first = await keepCard(shelf, ada, null)
    const second = await keepCard(shelf, { ...ada, note: "Tea." }, first.rev)
    const late = keepCard(shelf, { ...ada, note: "Coffee." }, first.rev)
    expect(await late.catch(codeOf)).toBe("card-changed-elsewhere")
    expect(await readCard(shelf, "ada")).toMatchObject({ kept: { card: { note: "Tea." }, rev: second.rev } })
  })

  it("comes with many others, or none of them does", async () => {
    await keepCard(shelf, ada, null)
    expect(await addCards(shelf, [zoe, ada]).catch(() => "none")).toBe("none")
    expect((await listCards(shelf)).map(({ id }) => id)).toEqual(["ada"])
  })
})

describe("a plan on a card", () => {
  beforeEach(async () => {
    await keepCard(shelf, ada, null)
    await keepPlan(shelf, samplePlan)
    await putOnCard(shelf, samplePlan.id, "ada")
  })

  it("is told by its day and by whether it was carried out", async () => {
    const served = { ...servedPlan(), id: "served", date: "2026-03-09" }
    await keepPlan(shelf, {
      ...served,
      consultation: served.consultation && { ...served.consultation, upkeepWeeks: 9 },
    })
    await putOnSameCard(shelf, "served", samplePlan.id)
    expect(await visitsOf(shelf, "ada")).toEqual(await listVisits(shelf))
    expect((await visitsOf(shelf, "ada")).find(({ planId }) => planId === "served")).toEqual({
      planId: "served",
      cardId: "ada",
      name: served.name,
      day: "2026-03-09",
      served: true,
      upkeepWeeks: 9,
    })
  })

  it("is of no card once it is taken off it, and never of one that is gone", async () => {
    await putOnCard(shelf, samplePlan.id, null)
    expect(await cardOfPlan(shelf, samplePlan.id)).toBeNull()
    expect(await putOnCard(shelf, samplePlan.id, "nobody").catch(codeOf)).toBe("card-changed-elsewhere")
    expect(await cardOfPlan(shelf, samplePlan.id)).toBeNull()
  })

  it("comes back to its card from the bin, and leaves no trace there once it is erased", async () => {
    await removePlan(shelf, samplePlan.id)
    expect(await visitsOf(shelf, "ada")).toEqual([])
    await putBack(shelf, samplePlan.id)
    expect(await visitsOf(shelf, "ada")).toHaveLength(1)
    await removePlan(shelf, samplePlan.id)
    await erase(shelf, samplePlan.id)
    expect(await cardOfPlan(shelf, samplePlan.id)).toBeNull()
  })

  it("stays when its card goes", async () => {
    await removeCard(shelf, "ada")
    expect([await listCards(shelf), await readCard(shelf, "ada")]).toEqual([[], null])
    expect([await listVisits(shelf), (await listPlans(shelf)).length]).toEqual([[], 1])
  })

  it("goes over to the card that two become", async () => {
    const [kept, other] = [await keepCard(shelf, zoe, null), await readCard(shelf, "ada")]
    if (!other?.ok) throw new Error("the card is there")
    await keepMerged(shelf, { ...zoe, note: "Both." }, kept, other.kept)
    expect((await listCards(shelf)).map(({ id }) => id)).toEqual(["zoe"])
    expect((await visitsOf(shelf, "zoe")).map(({ planId }) => planId)).toEqual([samplePlan.id])
    const again = keepMerged(shelf, zoe, kept, other.kept)
    expect(await again.catch(codeOf)).toBe("card-changed-elsewhere")
  })
})

describe("a shelf from before there were cards", () => {
  it("has its plans as they were, told with their day, and room for cards", async () => {
    const old = await openDB(name, 4, {
      upgrade(database) {
        for (const store of ["plans", "entries", "bin", "binEntries", "techniques"])
          database.createObjectStore(store, { keyPath: "id" })
        database.createObjectStore("services", { keyPath: "planId" })
        database.createObjectStore("aside")
        database.createObjectStore("settings")
      },
    })
    const { text, ...entry } = toRecord({ ...emptyPlan, date: "2025-12-31" })
    await old.put("plans", { text, ...entry })
    await old.put("entries", {
      id: entry.id,
      name: entry.name,
      initials: "",
      savedAt: entry.savedAt,
      served: false,
    })
    old.close()
    expect(await listPlans(shelf)).toMatchObject([{ id: emptyPlan.id, day: "2025-12-31", upkeepWeeks: null }])
    await keepCard(shelf, ada, null)
    await putOnCard(shelf, emptyPlan.id, "ada")
    expect(await visitsOf(shelf, "ada")).toMatchObject([{ day: "2025-12-31" }])
  })
})
