import { newId } from "../core/document/newId"
import { allAtOnce, allOrNothing } from "./allOrNothing"
import { NotKeptError } from "./notKept"
import { entryOf } from "./planRecord"
import type { PlanRecord } from "./records"
import type { Database } from "./shelfDatabase"

// Power can fail: saved means on the disk.
const writing = { durability: "strict" } as const

/**
 * Puts a record in the tick of the call, and takes it back when the one it replaces is not among the `known` revs:
 * then another tab has written since. `stood` says whether this tab has had the plan on the shelf.
 */
export async function putRecord(
  database: Database,
  record: PlanRecord,
  known: ReadonlySet<string>,
  stood: boolean,
) {
  const transaction = database.transaction(["plans", "entries", "settings"], "readwrite", writing)
  const plans = transaction.objectStore("plans")
  await allOrNothing(transaction, async () => {
    const [stored] = await allAtOnce(
      () => plans.get(record.id),
      () => plans.put(record),
      () => transaction.objectStore("entries").put(entryOf(record)),
      () => transaction.objectStore("settings").put(record.id, "lastPlan"),
    )
    if (stored ? known.has(stored.rev) : !stood) return
    throw new NotKeptError({ code: stored ? "changed-elsewhere" : "removed-elsewhere" })
  })
}

/** Moves a record that cannot be read out of the way, as it is. */
export async function setRecordAside(database: Database, id: string) {
  const transaction = database.transaction(["plans", "entries", "aside"], "readwrite", writing)
  await allOrNothing(transaction, async () => {
    const record = await transaction.objectStore("plans").get(id)
    await allAtOnce(
      () => transaction.objectStore("aside").put(record, `${id} ${newId()}`),
      () => transaction.objectStore("plans").delete(id),
      () => transaction.objectStore("entries").delete(id),
    )
  })
}
