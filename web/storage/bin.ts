import { openPlan } from "../core/file/planFile"
import { noted } from "./chairNote"
import { NotKeptError } from "./notKept"
import { entryOf } from "./planRecord"
import type { BinEntry } from "./records"
import { type Shelf, takeIn } from "./shelf"
import type { Database } from "./shelfDatabase"

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

async function moveToBin(database: Database, id: string, deletedAt: string) {
  const stores = ["plans", "entries", "services", "bin", "binEntries"] as const
  const transaction = database.transaction(stores, "readwrite", writing)
  const [plans, services] = [transaction.objectStore("plans"), transaction.objectStore("services")]
  const [record, service] = await Promise.all([plans.get(id), services.get(id)])
  if (service?.running || isRunningInNote(id)) {
    transaction.abort()
    await transaction.done.catch(() => {})
    throw new NotKeptError({ code: "service-running" })
  }
  if (record) {
    const { name, initials } = record
    void transaction.objectStore("bin").put({ id, record, service })
    void transaction.objectStore("binEntries").put({ id, name, initials, deletedAt })
  }
  void plans.delete(id)
  void transaction.objectStore("entries").delete(id)
  void services.delete(id)
  await transaction.done
}

const isRunningInNote = (id: string) => noted(id)?.value.endedAt === null

/** What the bin holds, the last deleted first. */
export async function listBin({ connection }: Shelf): Promise<BinEntry[]> {
  const entries = await connection.run((database) => database.getAll("binEntries"))
  return entries.sort((a, b) => b.deletedAt.localeCompare(a.deletedAt))
}

/** Puts a deleted plan back on the shelf with the service that was at its chair; beside another that has its id by now, as a copy. */
export async function putBack(shelf: Shelf, id: string) {
  const { record, isTaken } = await shelf.connection.run(async (database) => {
    const transaction = database.transaction(
      ["plans", "entries", "services", "bin", "binEntries"],
      "readwrite",
      writing,
    )
    const [binned, standing] = await Promise.all([
      transaction.objectStore("bin").get(id),
      transaction.objectStore("plans").get(id),
    ])
    if (binned && !standing) {
      void transaction.objectStore("plans").put(binned.record)
      void transaction.objectStore("entries").put(entryOf(binned.record))
      if (binned.service) void transaction.objectStore("services").put(binned.service)
      void transaction.objectStore("bin").delete(id)
      void transaction.objectStore("binEntries").delete(id)
    }
    await transaction.done
    return { record: binned?.record, isTaken: standing !== undefined }
  })
  if (!record || !isTaken) return
  const opened = openPlan(record.text, () => [])
  if (opened.ok && (await takeIn(shelf, opened.plan)).kept.state === "saved") await erase(shelf, id)
}

/** Takes a plan out of the bin for good. */
export const erase = ({ connection }: Shelf, ...ids: readonly string[]) =>
  connection.run(async (database) => {
    const transaction = database.transaction(["bin", "binEntries"], "readwrite", writing)
    for (const id of ids) {
      void transaction.objectStore("bin").delete(id)
      void transaction.objectStore("binEntries").delete(id)
    }
    await transaction.done
  })

/** Erases what has been in the bin for its time. */
export async function emptyBin(shelf: Shelf, nowMs: number) {
  const old = (await listBin(shelf)).filter(
    ({ deletedAt }) => nowMs - Date.parse(deletedAt) > binDays * dayMs,
  )
  if (old.length > 0) await erase(shelf, ...old.map(({ id }) => id))
}
