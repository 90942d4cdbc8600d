import { lineProblems } from "../core/checks/partingProblems"
import type { Plan } from "../core/document/schema"
import { openPlan } from "../core/file/planFile"
import { isRecord } from "./planRecord"
import type { PlanRecord, ShelfEntry } from "./records"
import { type Kept, keepPlan, openKept, type Shelf } from "./shelf"

/** All plans of the shelf, the one last in hand first: opened or written. */
export async function listPlans({ connection }: Shelf): Promise<ShelfEntry[]> {
  const entries = await connection.run((database) => database.getAll("entries"))
  return entries.sort((a, b) => lastInHand(b).localeCompare(lastInHand(a)))
}

const lastInHand = ({ savedAt, openedAt = "" }: ShelfEntry) => (openedAt > savedAt ? openedAt : savedAt)

/** Notes in the list that a plan is opened now. */
export const noteOpened = ({ connection }: Shelf, id: string): Promise<void> =>
  connection.run(async (database) => {
    const { store, done } = database.transaction("entries", "readwrite")
    const entry = await store.get(id)
    if (entry) await store.put({ ...entry, openedAt: new Date().toISOString() })
    await done
  })

/** A plan of the shelf to be looked at; nothing is written, and one that cannot be read is null. */
export async function lookAtPlan({ connection }: Shelf, id: string): Promise<Plan | null> {
  const record = await connection.run((database) => database.get("plans", id))
  const opened = openPlan(isRecord(record) ? record.text : "", lineProblems)
  return opened.ok ? opened.plan : null
}

/** The plans of a shelf that cannot be written in, each with the text of its file: of a newer Partline, or held by another window. */
export async function lookAtPlans({ connection }: Shelf): Promise<PlanRecord[]> {
  const records = (await connection.look("plans")).filter(isRecord)
  return records.sort((a, b) => b.savedAt.localeCompare(a.savedAt))
}

/** Gives a plan another name while it is not on the screen; the one on the screen is renamed by an edit. */
export async function renamePlan(shelf: Shelf, id: string, name: string): Promise<Kept> {
  const opened = await openKept(shelf, id)
  if (!opened.ok) return { state: "not-saved", why: { code: "unreadable", problem: opened.problems[0] } }
  return keepPlan(shelf, { ...opened.plan, name })
}

/** A choice kept beside the plans, such as the hand the screen is laid out for. */
export const readSetting = ({ connection }: Shelf, name: string): Promise<unknown> =>
  connection.run((database) => database.get("settings", name))

export const keepSetting = ({ connection }: Shelf, name: string, value: unknown) =>
  connection.run((database) => database.put("settings", value, name))
