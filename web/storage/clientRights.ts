import type { ClientExport } from "../core/cards/clientFile"
import { isGroup } from "../core/checks/problem"
import { allOrNothing } from "./allOrNothing"
import { readCard } from "./cards"
import { forgetNote, noted } from "./chairNote"
import { forgetTime } from "./chairTimeNote"
import { NotKeptError } from "./notKept"
import type { Shelf } from "./shelf"
import { keepSetting, readSetting } from "./shelfList"

/** That something was handed out or erased, and when: never of whom. */
export type RightsEntry = { what: "exported" | "erased"; at: string; plans: number }

const key = "rightsLog"

export async function rightsLog(shelf: Shelf): Promise<readonly RightsEntry[]> {
  return entriesIn(await readSetting(shelf, key))
}

const entriesIn = (kept: unknown): RightsEntry[] => (Array.isArray(kept) ? kept.filter(isEntry) : [])

const isEntry = (value: unknown): value is RightsEntry =>
  isGroup(value) && (value.what === "exported" || value.what === "erased") && typeof value.at === "string"

/** All that is kept of one client, plans in the bin too; null where there is no such card, or it cannot be read. */
export async function exportClient(shelf: Shelf, cardId: string, at: string): Promise<ClientExport | null> {
  const read = await readCard(shelf, cardId)
  if (!read?.ok) return null
  const plans = await shelf.connection.run(async (database) => {
    const ids = await database.getAllKeysFromIndex("visits", "card", cardId)
    const found = await Promise.all(
      ids.map(async (id) => (await database.get("plans", id)) ?? (await database.get("bin", id))?.record),
    )
    return found.flatMap((record) => (record ? [record.text] : []))
  })
  const log = [...(await rightsLog(shelf)), { what: "exported" as const, at, plans: plans.length }]
  await keepSetting(shelf, key, log)
  return { madeAt: at, card: read.kept.card, plans }
}

const everyStore = [
  "cards",
  "cardEntries",
  "visits",
  "plans",
  "entries",
  "services",
  "bin",
  "binEntries",
  "aside",
  "settings",
] as const

/**
 * Erases one client for good: the card, every plan on it whether on the shelf, in the bin or set aside, and every service.
 * All of it or nothing; never while one of the services is going on. Gives the ids of the plans that went.
 */
export async function eraseClient(shelf: Shelf, cardId: string, at: string): Promise<readonly string[]> {
  const ids = await shelf.connection.run((database) => {
    const transaction = database.transaction(everyStore, "readwrite", { durability: "strict" })
    const store = transaction.objectStore.bind(transaction)
    return allOrNothing(transaction, async () => {
      const [plans, aside, lastPlan, log] = await Promise.all([
        store("visits").index("card").getAllKeys(cardId),
        store("aside").getAllKeys(),
        store("settings").get("lastPlan"),
        store("settings").get(key),
      ])
      const services = await Promise.all(plans.map((id) => store("services").get(id)))
      if (services.some((service) => service?.running) || plans.some(isRunningInNote))
        throw new NotKeptError({ code: "service-running" })
      const entry: RightsEntry = { what: "erased", at, plans: plans.length }
      await Promise.all([
        store("cards").delete(cardId),
        store("cardEntries").delete(cardId),
        ...plans.flatMap((id) => [
          store("visits").delete(id),
          store("plans").delete(id),
          store("entries").delete(id),
          store("services").delete(id),
          store("bin").delete(id),
          store("binEntries").delete(id),
        ]),
        ...aside
          .filter((each) => plans.includes(each.split(" ")[0]))
          .map((each) => store("aside").delete(each)),
        ...(plans.some((id) => id === lastPlan) ? [store("settings").delete("lastPlan")] : []),
        store("settings").put([...entriesIn(log), entry], key),
      ])
      return plans
    })
  })
  for (const id of ids) {
    shelf.standing.delete(id)
    forgetNote(id)
    forgetTime(id)
  }
  return ids
}

const isRunningInNote = (id: string) => noted(id)?.value.endedAt === null
