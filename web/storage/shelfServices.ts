import type { Plan } from "../core/document/schema"
import { openPlan } from "../core/file/planFile"
import { allAtOnce, allOrNothing } from "./allOrNothing"
import { NotKeptError, whyNotKept } from "./notKept"
import { isRecord } from "./planRecord"
import type { KeptService } from "./records"
import type { Kept, Shelf } from "./shelf"
import type { Database } from "./shelfDatabase"

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
    return { state: "not-saved", why: whyNotKept(error, "service") }
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
  const entries = await connection.run((database) => database.getAll("entries"))
  const ids = entries.filter(({ served }) => served).map(({ id }) => id)
  const records = await connection.run((database) => Promise.all(ids.map((id) => database.get("plans", id))))
  return records.flatMap((record) => {
    const opened = isRecord(record) ? openPlan(record.text, () => []) : null
    return opened?.ok && opened.plan.service ? [opened.plan] : []
  })
}

async function putService(database: Database, service: KeptService, known: ReadonlySet<string>) {
  const transaction = database.transaction("services", "readwrite", writing)
  await allOrNothing(transaction, async () => {
    const [stored] = await allAtOnce(
      () => transaction.store.get(service.planId),
      () => transaction.store.put(service),
    )
    if (stored && !known.has(stored.rev)) throw new NotKeptError({ code: "changed-elsewhere" })
  })
}
