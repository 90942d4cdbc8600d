import type { IDBPTransaction } from "idb"
import { openPlan } from "../core/file/planFile"
import { allAtOnce, allOrNothing } from "./allOrNothing"
import { noted } from "./chairNote"
import { NotKeptError } from "./notKept"
import { entryOf } from "./planRecord"
import type { BinEntry } from "./records"
import { type Shelf, takeIn } from "./shelf"
import type { Database, ShelfSchema } from "./shelfDatabase"

const writing = { durability: "strict" } as const

/** Deleted plans can be put back for so long. */
export const binDays = 30
const dayMs = 86_400_000

/** Takes a plan off the shelf with all that is kept beside it, into the bin; never one whose service is going on. */
export async function removePlan(shelf: Shelf, id: string): Promise<() => Promise<void>> {
  await shelf.connection.run((database) => moveToBin(database, id, new Date().toISOString()))
  shelf.standing.delete(id)
  return () => putBack(shelf, id)
}

function moveToBin(database: Database, id: string, deletedAt: string) {
  const transaction = database.transaction(everyStore, "readwrite", writing)
  const store = transaction.objectStore.bind(transaction)
  return allOrNothing(transaction, async () => {
    const [record, service] = await Promise.all([store("plans").get(id), store("services").get(id)])
    if (service?.running || isRunningInNote(id)) throw new NotKeptError({ code: "service-running" })
    await allAtOnce(
      () => store("plans").delete(id),
      () => store("entries").delete(id),
      () => store("services").delete(id),
    )
    if (!record) return
    const { name, initials } = record
    await allAtOnce(
      () => store("bin").put({ id, record, service }),
      () => store("binEntries").put({ id, name, initials, deletedAt }),
    )
  })
}

const everyStore = ["plans", "entries", "services", "bin", "binEntries"] as const

const isRunningInNote = (id: string) => noted(id)?.value.endedAt === null

/** What the bin holds, the last deleted first. */
export async function listBin({ connection }: Shelf): Promise<BinEntry[]> {
  const entries = await connection.run((database) => database.getAll("binEntries"))
  return entries.sort((a, b) => b.deletedAt.localeCompare(a.deletedAt))
}

/** Puts a deleted plan back on the shelf with the service that was at its chair; beside another that has its id by now, as a copy. */
export async function putBack(shelf: Shelf, id: string) {
  const { record, isTaken } = await shelf.connection.run((database) => takeFromBin(database, id))
  if (!record || !isTaken) return
  const opened = openPlan(record.text, () => [])
  if (opened.ok && (await takeIn(shelf, opened.plan)).kept.state === "saved") await erase(shelf, id)
}

function takeFromBin(database: Database, id: string) {
  const transaction = database.transaction(everyStore, "readwrite", writing)
  const store = transaction.objectStore.bind(transaction)
  return allOrNothing(transaction, async () => {
    const [binned, standing] = await Promise.all([store("bin").get(id), store("plans").get(id)])
    if (binned && !standing) {
      const { record, service } = binned
      await allAtOnce(
        () => store("plans").put(record),
        () => store("entries").put(entryOf(record)),
        async () => service && store("services").put(service),
        () => store("bin").delete(id),
        () => store("binEntries").delete(id),
      )
    }
    return { record: binned?.record, isTaken: standing !== undefined }
  })
}

/** Takes a plan out of the bin for good. */
export const erase = ({ connection }: Shelf, ...ids: readonly string[]) =>
  connection.run((database) => {
    const transaction = database.transaction(["bin", "binEntries", "plans", "visits"], "readwrite", writing)
    return allOrNothing(transaction, () =>
      Promise.all(
        ids.flatMap((id) => [
          transaction.objectStore("bin").delete(id),
          transaction.objectStore("binEntries").delete(id),
          unlinkIfGone(transaction, id),
        ]),
      ),
    )
  })

/** The plan belongs to no card any more, unless another stands under its id. */
async function unlinkIfGone(transaction: Erasing, id: string) {
  if (!(await transaction.objectStore("plans").getKey(id))) await transaction.objectStore("visits").delete(id)
}

type Erasing = IDBPTransaction<ShelfSchema, ("bin" | "binEntries" | "plans" | "visits")[], "readwrite">

/** Erases what has been in the bin for its time. */
export async function emptyBin(shelf: Shelf, nowMs: number) {
  const old = (await listBin(shelf)).filter(
    ({ deletedAt }) => nowMs - Date.parse(deletedAt) > binDays * dayMs,
  )
  if (old.length > 0) await erase(shelf, ...old.map(({ id }) => id))
}
