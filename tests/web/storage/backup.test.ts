import "fake-indexeddb/auto"
import { beforeEach, describe, expect, it } from "vitest"
import { newCard } from "../../../web/core/cards/card"
import { newId } from "../../../web/core/document/newId"
import { readBackup, writeBackup } from "../../../web/core/file/backup"
import { savePlan } from "../../../web/core/file/planFile"
import { saveTechnique } from "../../../web/core/file/techniqueFile"
import { emptySalonShelf } from "../../../web/core/weighing/salonRecord"
import { lookThrough, restore } from "../../../web/session/backup/backup"
import { changeSalon, readSalon } from "../../../web/session/salon/salonShelf"
import { keepTechnique, techniqueStore } from "../../../web/session/techniqueShelf"
import { listAside } from "../../../web/storage/aside"
import { partsForBackup } from "../../../web/storage/backup"
import { keepCard, listCards, readCard } from "../../../web/storage/cards"
import { putOnCard, visitsOf } from "../../../web/storage/cardVisits"
import { keepPlan, openKept, openShelf, type Shelf } from "../../../web/storage/shelf"
import { listPlans } from "../../../web/storage/shelfList"
import { emptyPlan, samplePlan } from "../../support/samples"
import { usualTechnique } from "../../support/techniques"

const other = { ...emptyPlan, id: "other", name: "Other" }

let here: Shelf
let there: Shelf
beforeEach(() => {
  here = openShelf(`here ${newId()}`)
  there = openShelf(`there ${newId()}`)
})

const madeAt = "2026-03-09T10:00:00.000Z"
const backupOf = async (shelf: Shelf) => writeBackup({ madeAt, ...(await partsForBackup(shelf)) })

async function look(text: string, shelf: Shelf) {
  const looked = await lookThrough(new Blob([text]), shelf)
  if (!looked.ok) throw new Error(looked.problem.code)
  return looked
}

describe("a backup", () => {
  it("brings every plan, technique and thing of the salon to an empty device, just as they were", async () => {
    await keepPlan(here, samplePlan)
    await keepPlan(here, other)
    await keepTechnique({ ...usualTechnique("bright-frame"), id: "own", name: "Ours" }, here)
    await changeSalon(() => ({ ...emptySalonShelf(), bottles: [20, 30], scaleStepG: 0.1 }), here)
    await restore(await look(await backupOf(here), there), there)
    expect(await openKept(there, samplePlan.id)).toEqual({ ok: true, plan: samplePlan })
    expect((await listPlans(there)).map(({ id }) => id).sort()).toEqual([samplePlan.id, other.id].sort())
    expect(techniqueStore.getState().own.map(({ name }) => name)).toEqual(["Ours"])
    expect((await readSalon(there)).bottles).toEqual([20, 30])
    expect(await partsForBackup(there)).toEqual(await partsForBackup(here))
  })

  it("replaces nothing: what is here just so is left, what differs comes beside it", async () => {
    await keepPlan(here, samplePlan)
    await keepPlan(here, other)
    const text = await backupOf(here)
    await keepPlan(here, { ...samplePlan, name: "Drawn since" })
    const looked = await look(text, here)
    expect(looked.restoring).toMatchObject({ added: [], same: 1, unread: [] })
    expect(looked.restoring.beside).toHaveLength(1)
    await restore(looked, here)
    const names = (await listPlans(here)).map(({ name }) => name)
    expect(names.sort()).toEqual([other.name, "Drawn since", samplePlan.name].sort())
    const again = await openKept(here, samplePlan.id)
    expect(again.ok && again.plan.name).toBe("Drawn since")
  })

  it("takes all of its plans in or none", async () => {
    await keepPlan(here, samplePlan)
    await keepPlan(here, other)
    const looked = await look(await backupOf(here), there)
    // Meanwhile another window brings one of them.
    await keepPlan(there, other)
    await expect(restore(looked, there)).rejects.toThrow()
    expect((await listPlans(there)).map(({ id }) => id)).toEqual([other.id])
  })

  it("sets aside what it cannot read, and takes in the rest", async () => {
    const text = writeBackup({
      madeAt,
      plans: [
        { savedAt: madeAt, text: savePlan(samplePlan) },
        { savedAt: madeAt, text: "{ cut short" },
      ],
      techniques: ["no technique", saveTechnique(usualTechnique("bright-frame"))],
      cards: [],
      visits: [],
      salon: { bottles: ["thirty"] },
    })
    const looked = await look(text, there)
    expect(looked.restoring.techniques).toHaveLength(1)
    await restore(looked, there)
    expect((await listPlans(there)).map(({ id }) => id)).toEqual([samplePlan.id])
    expect((await listAside(there)).map((each) => each.text)).toEqual(["{ cut short"])
  })

  it("refuses in a sentence what is no backup, is damaged or is newer", () => {
    const codeOf = (text: string) => {
      const read = readBackup(text)
      return read.ok ? null : read.problem.code
    }
    expect(codeOf("")).toBe("empty")
    expect(codeOf('{"kind":"partline-backup","version":1,"plans":[{"sav')).toBe("not-json")
    expect(codeOf('{"kind":"partline-backup","version":1,"plans":7,"techniques":[]}')).toBe("not-json")
    expect(codeOf(savePlan(samplePlan))).toBe("another-kind")
    expect(codeOf('{"kind":"partline-backup","version":2}')).toBe("newer-version")
  })
})

describe("cards of clients in a backup", () => {
  const ada = { ...newCard("ada", "Ada"), note: "Tea." }
  const fill = async (shelf: Shelf) => {
    await keepPlan(shelf, samplePlan)
    const kept = await keepCard(shelf, ada, null)
    await putOnCard(shelf, samplePlan.id, "ada")
    return kept
  }

  it("come with their visits to an empty device", async () => {
    await fill(here)
    await restore(await look(await backupOf(here), there), there)
    expect(await readCard(there, "ada")).toMatchObject({ kept: { card: ada } })
    expect((await visitsOf(there, "ada")).map(({ planId }) => planId)).toEqual([samplePlan.id])
    expect((await look(await backupOf(here), there)).restoring).toMatchObject({
      cards: [],
      visits: [],
      same: 1,
    })
  })

  it("come beside a card that stands otherwise, with the plans that come beside too", async () => {
    const { rev } = await fill(here)
    const text = await backupOf(here)
    await keepCard(here, { ...ada, note: "Coffee." }, rev)
    await keepPlan(here, { ...samplePlan, name: "Drawn since" })
    await restore(await look(text, here), here)
    const others = (await listCards(here)).filter(({ id }) => id !== "ada")
    expect(others).toHaveLength(1)
    expect((await visitsOf(here, others[0].id)).map(({ name }) => name)).toEqual([samplePlan.name])
    expect((await visitsOf(here, "ada")).map(({ name }) => name)).toEqual(["Drawn since"])
  })

  it("are set aside where they cannot be read, and a backup from before there were cards has none", async () => {
    const looked = await look(writeBackup({ ...(await partsForBackup(here)), madeAt, cards: ["{"] }), here)
    expect([looked.restoring.cards, looked.restoring.unread.length]).toEqual([[], 1])
    const old = readBackup(
      '{"kind":"partline-backup","version":1,"madeAt":"","plans":[],"techniques":[],"salon":null}',
    )
    expect(old.ok && [old.backup.cards, old.backup.visits]).toEqual([[], []])
  })
})
