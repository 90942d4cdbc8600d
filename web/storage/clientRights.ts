import type { ClientExport } from "../core/cards/clientFile"
import type { Retention } from "../core/cards/retention"
import { isGroup } from "../core/checks/problem"
import { type NamedPlan, withoutPlans } from "../core/weighing/withoutPlans"
import { allOrNothing } from "./allOrNothing"
import { readCard } from "./cards"
import { forgetNote, noted } from "./chairNote"
import { forgetTime } from "./chairTimeNote"
import { NotKeptError } from "./notKept"
import { retentionIn, retentionKey } from "./retention"
import type { Shelf } from "./shelf"
import { readSetting } from "./shelfList"

/** That something was handed out or erased, and on which day: never of whom. */
export type RightsEntry = { what: "exported" | "erased"; on: string; plans: number }

const key = "rightsLog"
/** So many of the latest are kept. */
const mostEntries = 1000

export async function rightsLog(shelf: Shelf): Promise<readonly RightsEntry[]> {
  return entriesIn(await readSetting(shelf, key))
}

const entriesIn = (kept: unknown): RightsEntry[] => (Array.isArray(kept) ? kept.filter(isEntry) : [])

const isEntry = (value: unknown): value is RightsEntry =>
  isGroup(value) && (value.what === "exported" || value.what === "erased") && typeof value.on === "string"

const withEntry = (kept: unknown, entry: RightsEntry) => [...entriesIn(kept), entry].slice(-mostEntries)

/** Notes that a client was handed out; one that is erased is noted as it goes. */
export const noteRight = ({ connection }: Shelf, entry: RightsEntry): Promise<void> =>
  connection.run(async (database) => {
    const { store, done } = database.transaction("settings", "readwrite")
    await store.put(withEntry(await store.get(key), entry), key)
    await done
  })

/** How many plans are on a card, those in the bin among them. */
export const plansOnCard = ({ connection }: Shelf, cardId: string): Promise<number> =>
  connection.run((database) => database.countFromIndex("visits", "card", cardId))

/**
 * All that is kept of one client, plans in the bin and those that could not be read too; null where there is no such card,
 * or it cannot be read.
 */
export async function readClient(shelf: Shelf, cardId: string, madeAt: string): Promise<ClientExport | null> {
  const read = await readCard(shelf, cardId)
  if (!read?.ok) return null
  const plans = await shelf.connection.run(async (database) => {
    const [ids, keys] = await Promise.all([
      database.getAllKeysFromIndex("visits", "card", cardId),
      database.getAllKeys("aside"),
    ])
    const asideKeys = keys.filter((each) => isAsideOf(each, ids))
    const [found, aside] = await Promise.all([
      Promise.all(
        ids.map(async (id) => (await database.get("plans", id)) ?? (await database.get("bin", id))?.record),
      ),
      Promise.all(asideKeys.map((each) => database.get("aside", each))),
    ])
    return [...found, ...aside].flatMap((record) => (record ? [textOf(record)] : []))
  })
  return { madeAt, card: read.kept.card, plans }
}

const textOf = (record: unknown): string =>
  isGroup(record) && typeof record.text === "string" ? record.text : JSON.stringify(record)

/** What was set aside stands under the id of its plan and one of its own. */
const isAsideOf = (asideKey: string, ids: readonly string[]) => ids.includes(asideKey.split(" ")[0])

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
const storesByPlan = ["visits", "plans", "entries", "services", "bin", "binEntries"] as const

/**
 * Erases one client for good: the card, every plan on it whether on the shelf, in the bin or set aside, every service, and
 * the names of its plans wherever the salon's weighings have them. All of it or nothing; never while one of the services is
 * going on. Gives the ids of the plans that went.
 */
export async function eraseClient(shelf: Shelf, cardId: string, on: string): Promise<readonly string[]> {
  const ids = await shelf.connection.run((database) => {
    const transaction = database.transaction(everyStore, "readwrite", { durability: "strict" })
    const store = transaction.objectStore.bind(transaction)
    return allOrNothing(transaction, async () => {
      const ids = await store("visits").index("card").getAllKeys(cardId)
      const services = await Promise.all(ids.map((id) => store("services").get(id)))
      if (services.some((service) => service?.running) || ids.some(isRunningInNote))
        throw new NotKeptError({ code: "service-running" })
      const plans = await Promise.all(
        ids.map(async (id) => {
          const record = (await store("plans").get(id)) ?? (await store("bin").get(id))?.record
          return { id, name: record?.name ?? "" }
        }),
      )
      await clearSettings(store("settings"), cardId, plans)
      const entry: RightsEntry = { what: "erased", on, plans: plans.length }
      const [asideKeys, log] = await Promise.all([store("aside").getAllKeys(), store("settings").get(key)])
      await Promise.all([
        store("cards").delete(cardId),
        store("cardEntries").delete(cardId),
        ...ids.flatMap((id) => storesByPlan.map((name) => store(name).delete(id))),
        ...asideKeys
          .filter((each) => isAsideOf(each, [...ids, cardId]))
          .map((each) => store("aside").delete(each)),
        store("settings").put(withEntry(log, entry), key),
      ])
      return ids
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

type Settings = {
  get(name: string): Promise<unknown>
  put(value: unknown, name: string): Promise<unknown>
  delete(name: string): Promise<unknown>
}

/** Takes a client out of what is kept beside the plans. */
async function clearSettings(settings: Settings, cardId: string, plans: readonly NamedPlan[]) {
  const left: Readonly<Record<string, (kept: unknown) => unknown>> = {
    salon: (kept) => withoutPlans(kept, plans),
    "salon-aside": (kept) => withoutPlans(kept, plans),
    [retentionKey]: (kept) => withoutCard(retentionIn(kept), cardId),
    lastPlan: (kept) => (plans.some(({ id }) => id === kept) ? undefined : kept),
  }
  for (const [name, leave] of Object.entries(left)) {
    const kept = await settings.get(name)
    const next = kept === undefined ? undefined : leave(kept)
    if (next === undefined) await settings.delete(name)
    else await settings.put(next, name)
  }
}

function withoutCard({ years, stays }: Retention, cardId: string): Retention {
  const { [cardId]: _, ...others } = stays
  return { years, stays: others }
}
