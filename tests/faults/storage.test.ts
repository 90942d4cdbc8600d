import "fake-indexeddb/auto"
import fc from "fast-check"
import { afterEach, describe, expect, it } from "vitest"
import { newId } from "../../web/core/document/newId"
import { listBin, removePlan } from "../../web/storage/bin"
import { type Kept, keepPlan, openKept, openShelf, takeIn } from "../../web/storage/shelf"
import { listPlans, renamePlan } from "../../web/storage/shelfList"
import { emptyPlan, samplePlan } from "../support/samples"
import { howMany } from "./howMany"

const put = IDBObjectStore.prototype.put
afterEach(() => {
  IDBObjectStore.prototype.put = put
})

/** From the given write on the disk has no room. */
function fillDiskAt(write: number) {
  let writes = 0
  IDBObjectStore.prototype.put = function (...given) {
    writes += 1
    if (writes >= write) throw new DOMException("full", "QuotaExceededError")
    return put.apply(this, given)
  }
}

describe("a full disk", () => {
  it.each(Array.from({ length: 12 }, (_, i) => i + 1))(
    "from write %i on: what was saved is there, what was not says so, and plans open",
    async (write) => {
      const name = `full ${newId()}`
      const shelf = openShelf(name)
      await keepPlan(shelf, samplePlan)
      fillDiskAt(write)
      let last = samplePlan
      for (const called of ["One", "Two", "Three"]) {
        const plan = { ...samplePlan, name: called }
        const kept = await keepPlan(shelf, plan)
        if (kept.state === "saved") last = plan
        else expect(kept.why).toEqual({ code: "full", what: "plan" })
      }
      expect(await openKept(openShelf(name), samplePlan.id)).toEqual({ ok: true, plan: last })
      await takeIn(shelf, { ...emptyPlan, id: "file" })
      await renamePlan(shelf, samplePlan.id, "Renamed")
      await removePlan(shelf, samplePlan.id).catch(() => {})
      IDBObjectStore.prototype.put = put
      const later = openShelf(name)
      const here = [...(await listPlans(later)), ...(await listBin(later))].map(({ id }) => id)
      expect(here).toContain(samplePlan.id)
    },
  )
})

describe("two tabs", () => {
  it("never lose what one of them was told is saved, however they take turns", async () => {
    const step = fc.tuple(fc.nat(1), fc.constantFrom("keep", "open"))
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 12 }), async (steps) => {
        const name = `tabs ${newId()}`
        const tabs = [openShelf(name), openShelf(name)]
        await keepPlan(tabs[0], emptyPlan)
        let saved = emptyPlan.name
        let count = 0
        /** Whether each tab has seen the last writing. */
        const seen = [true, false]
        for (const [tab, what] of steps) {
          if (what === "open") {
            await openKept(tabs[tab], emptyPlan.id)
            seen[tab] = true
            continue
          }
          count += 1
          const plan = { ...emptyPlan, name: `${tab} ${count}` }
          const kept: Kept = await keepPlan(tabs[tab], plan)
          expect(kept.state).toBe(seen[tab] ? "saved" : "not-saved")
          if (kept.state !== "saved") continue
          saved = plan.name
          seen[1 - tab] = false
        }
        expect((await listPlans(openShelf(name)))[0].name).toBe(saved)
      }),
      { numRuns: howMany({ slice: 15, whole: 500 }) },
    )
  })
})
