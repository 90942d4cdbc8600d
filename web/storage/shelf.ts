import { lineProblems } from "../core/checks/partingProblems"
import { problemAt } from "../core/checks/problem"
import { copyOf } from "../core/document/newPlan"
import type { Plan } from "../core/document/schema"
import type { NotKept } from "../core/fields/notKept"
import { type Opened, openPlan, savePlan } from "../core/file/planFile"
import type { Connection } from "./connection"
import { whyNotKept } from "./notKept"
import { isRecord, toRecord } from "./planRecord"
import { connect, type Database } from "./shelfDatabase"
import { putRecord, setRecordAside } from "./shelfRecords"

/** The plans kept in this browser, as one tab sees them. */
export type Shelf = {
  connection: Connection<Database>
  /** Every writing this tab has made or read. A record with any other is someone else's. */
  knownRevs: Set<string>
  /** The plans as they stand on the shelf, as far as this tab knows. */
  standing: Map<string, Plan>
}

export type Kept = { state: "saved" } | { state: "not-saved"; why: NotKept }

export const openShelf = (databaseName = "partline"): Shelf => ({
  connection: connect(databaseName),
  knownRevs: new Set(),
  standing: new Map(),
})

/** Begins to write in the tick of the call; the outcome says when it is on the disk, or why it is not. */
export async function keepPlan({ connection, knownRevs, standing }: Shelf, plan: Plan): Promise<Kept> {
  try {
    const record = toRecord(plan)
    knownRevs.add(record.rev)
    const stood = standing.has(plan.id)
    await connection.run((database) => putRecord(database, record, knownRevs, stood))
    standing.set(plan.id, plan)
    return { state: "saved" }
  } catch (error) {
    return { state: "not-saved", why: whyNotKept(error) }
  }
}

/** Whether this very plan is what stands on the shelf. */
export const holds = ({ standing }: Shelf, plan: Plan) => standing.get(plan.id) === plan

/** A plan of the shelf. One that cannot be read is set aside, not thrown away; one a newer Partline wrote stays. */
export async function openKept(shelf: Shelf, id: string): Promise<Opened> {
  const { connection, knownRevs, standing } = shelf
  const record = await connection.run((database) => database.get("plans", id))
  if (!record) return notThere
  // What was drawn here was inside the hairline then: no later model of it locks a plan away. A line must be one.
  const opened = openPlan(isRecord(record) ? record.text : "", lineProblems)
  if (opened.ok) {
    knownRevs.add(record.rev)
    standing.set(id, opened.plan)
    // A full disk keeps no plan from being opened.
    await connection.run((database) => database.put("settings", id, "lastPlan")).catch(() => {})
  } else if (opened.problems[0].code !== "newer-version")
    await connection.run((database) => setRecordAside(database, id)).catch(() => {})
  return opened
}

/** The plan that was on the screen last, if there is one that can be read. */
export async function openLast(shelf: Shelf): Promise<Opened> {
  const id = await shelf.connection.run((database) => database.get("settings", "lastPlan"))
  return typeof id === "string" ? openKept(shelf, id) : notThere
}

/** Keeps a plan that came in a file. When another plan stands under its id both are kept, and the one given has a new id. */
export async function takeIn(shelf: Shelf, plan: Plan): Promise<{ plan: Plan; kept: Kept }> {
  const record = await shelf.connection.run((database) => database.get("plans", plan.id))
  if (record?.text === savePlan(plan)) shelf.knownRevs.add(record.rev)
  const own = record && !shelf.knownRevs.has(record.rev) ? copyOf(plan) : plan
  return { plan: own, kept: await keepPlan(shelf, own) }
}

const notThere: Opened = {
  ok: false,
  problems: [problemAt([], { code: "not-on-shelf" })],
}
