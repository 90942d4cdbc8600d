import { type DBSchema, type IDBPDatabase, openDB } from "idb"
import type { CardEntry } from "../core/cards/cardList"
import { type Connection, connectTo } from "./connection"
import { entryOf, isRecord } from "./planRecord"
import type {
  BinEntry,
  BinRecord,
  CardRecord,
  KeptService,
  PlanRecord,
  ShelfEntry,
  TechniqueRecord,
  VisitRecord,
} from "./records"

export interface ShelfSchema extends DBSchema {
  plans: { key: string; value: PlanRecord }
  /** What a list of plans shows of each, so that no list reads the plans themselves. */
  entries: { key: string; value: ShelfEntry }
  /** Plans that were deleted, with the service at their chair, for as long as they can be put back. */
  bin: { key: string; value: BinRecord }
  binEntries: { key: string; value: BinEntry }
  /** Plans that could not be read, kept as they were. */
  aside: { key: string; value: unknown }
  settings: { key: string; value: unknown }
  /** Services at the chair, by the id of their plan. */
  services: { key: string; value: KeptService }
  techniques: { key: string; value: TechniqueRecord }
  cards: { key: string; value: CardRecord }
  /** What a list of cards shows of each. */
  cardEntries: { key: string; value: CardEntry }
  /** Which card a plan belongs to, by the plan's id; a plan of no card is not in it. */
  visits: { key: string; value: VisitRecord; indexes: { card: string } }
}

export type Database = IDBPDatabase<ShelfSchema>

const presentVersion = 5

export const connect = (name: string): Connection<Database> =>
  connectTo(name, presentVersion, (hooks) =>
    openDB<ShelfSchema>(name, presentVersion, {
      upgrade: (database, version, _, transaction) => makeStores(database, version, transaction),
      ...hooks,
    }),
  )

type Upgrade = Parameters<NonNullable<NonNullable<Parameters<typeof openDB<ShelfSchema>>[2]>["upgrade"]>>[3]

/** Makes the stores, and the list of plans of a shelf from before it said as much as now. Old records are lifted when they are read. */
function makeStores(database: Database, version: number, transaction: Upgrade) {
  if (version < 1) {
    database.createObjectStore("plans", { keyPath: "id" })
    database.createObjectStore("aside")
    database.createObjectStore("settings")
  }
  if (version < 2) database.createObjectStore("services", { keyPath: "planId" })
  if (version < 3) database.createObjectStore("techniques", { keyPath: "id" })
  if (version < 4) {
    database.createObjectStore("entries", { keyPath: "id" })
    database.createObjectStore("bin", { keyPath: "id" })
    database.createObjectStore("binEntries", { keyPath: "id" })
  }
  if (version < 5) {
    database.createObjectStore("cards", { keyPath: "id" })
    database.createObjectStore("cardEntries", { keyPath: "id" })
    database.createObjectStore("visits", { keyPath: "planId" }).createIndex("card", "cardId")
    if (version > 0) void listPlansOnce(transaction)
  }
}

/** A record that is none is moved aside: nothing that was kept is out of sight. */
async function listPlansOnce(transaction: Upgrade) {
  const [entries, aside] = [transaction.objectStore("entries"), transaction.objectStore("aside")]
  let cursor = await transaction.objectStore("plans").openCursor()
  while (cursor) {
    if (isRecord(cursor.value)) void entries.put(entryOf(cursor.value))
    else {
      void aside.put(cursor.value, `${cursor.key} unlisted`)
      void cursor.delete()
    }
    cursor = await cursor.continue()
  }
}
