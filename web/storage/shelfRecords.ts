import { isGroup } from "../core/checks/problem"
import { newId } from "../core/document/newId"
import type { Plan } from "../core/document/schema"
import { savePlan } from "../core/file/planFile"
import type { Database, KeptService, PlanRecord } from "./shelfDatabase"
import { changedElsewhere, ElsewhereError, removedElsewhere } from "./shelfWords"

// Power can fail: saved means on the disk.
const writing = { durability: "strict" } as const

export const toRecord = (plan: Plan): PlanRecord => ({
  id: plan.id,
  rev: newId(),
  savedAt: new Date().toISOString(),
  name: plan.name,
  initials: plan.client.initials,
  text: savePlan(plan),
})

export const isRecord = (value: unknown): value is PlanRecord =>
  isGroup(value) &&
  ["id", "rev", "savedAt", "name", "initials", "text"].every((field) => typeof value[field] === "string")

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
  const transaction = database.transaction(["plans", "settings"], "readwrite", writing)
  const plans = transaction.objectStore("plans")
  const before = plans.get(record.id)
  const writes = [plans.put(record), transaction.objectStore("settings").put(record.id, "lastPlan")]
  const clash = before.then((stored) => {
    if (stored ? known.has(stored.rev) : !stood) return null
    transaction.abort()
    return new ElsewhereError(stored ? changedElsewhere : removedElsewhere)
  })
  const [outcome, elsewhere] = await Promise.allSettled([transaction.done, clash, ...writes])
  if (elsewhere.status === "fulfilled" && elsewhere.value) throw elsewhere.value
  if (outcome.status === "rejected") throw outcome.reason
}

/** A plan and what happened at its chair. */
export type RemovedPlan = { record: PlanRecord | undefined; service: KeptService | undefined }

/** Takes a plan off the shelf with all that is kept beside it, and gives it back. */
export async function removeRecord(database: Database, id: string): Promise<RemovedPlan> {
  const transaction = database.transaction(["plans", "services"], "readwrite", writing)
  const [plans, services] = [transaction.objectStore("plans"), transaction.objectStore("services")]
  const [record, service] = await Promise.all([plans.get(id), services.get(id)])
  await Promise.all([plans.delete(id), services.delete(id), transaction.done])
  return { record, service }
}

/** Moves a record that cannot be read out of the way, as it is. */
export async function setRecordAside(database: Database, id: string) {
  const transaction = database.transaction(["plans", "aside"], "readwrite", writing)
  const record = await transaction.objectStore("plans").get(id)
  await Promise.all([
    transaction.objectStore("aside").put(record, `${id} ${newId()}`),
    transaction.objectStore("plans").delete(id),
    transaction.done,
  ])
}
