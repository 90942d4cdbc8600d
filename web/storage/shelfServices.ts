import type { Plan } from "../core/document/schema"
import { openPlan } from "../core/file/planFile"
import type { Kept, Shelf } from "./shelf"
import type { Database, KeptService } from "./shelfDatabase"
import { isRecord } from "./shelfRecords"
import { changedElsewhere, ElsewhereError, whyNotKept } from "./shelfWords"

const writing = { durability: "strict" } as const

/** Begins to write in the tick of the call. A record of which the rev is not `known` is another window's, and stays. */
export async function keepService(
  { connection }: Shelf,
  service: KeptService,
  known: ReadonlySet<string>,
): Promise<Kept> {
  try {
    await connection.run((database) => putService(database, service, known))
    return { state: "saved" }
  } catch (error) {
    return { state: "not-saved", why: whyNotKept(error) }
  }
}

export const readService = ({ connection }: Shelf, planId: string): Promise<KeptService | undefined> =>
  connection.run((database) => database.get("services", planId))

/** Services that were begun and not ended, of whichever plan. */
export async function listRunning({ connection }: Shelf): Promise<KeptService[]> {
  const services = await connection.run((database) => database.getAll("services"))
  return services.filter(({ running }) => running)
}

/** The plans of the shelf at whose chair a service has been recorded; one that cannot be read teaches nothing. */
export async function listServed({ connection }: Shelf): Promise<Plan[]> {
  const records = await connection.run((database) => database.getAll("plans"))
  return records.flatMap((record) => {
    if (!isRecord(record) || !record.text.includes('"service"')) return []
    const opened = openPlan(record.text, () => [])
    return opened.ok && opened.plan.service ? [opened.plan] : []
  })
}

async function putService(database: Database, service: KeptService, known: ReadonlySet<string>) {
  const transaction = database.transaction("services", "readwrite", writing)
  const before = transaction.store.get(service.planId)
  const write = transaction.store.put(service)
  const clash = before.then((stored) => {
    if (!stored || known.has(stored.rev)) return null
    transaction.abort()
    return new ElsewhereError(changedElsewhere)
  })
  const [outcome, elsewhere] = await Promise.allSettled([transaction.done, clash, write])
  if (elsewhere.status === "fulfilled" && elsewhere.value) throw elsewhere.value
  if (outcome.status === "rejected") throw outcome.reason
}
