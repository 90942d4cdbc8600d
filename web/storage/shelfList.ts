import { isRecord } from "./planRecord"
import type { PlanRecord, ShelfEntry } from "./records"
import { type Kept, keepPlan, openKept, type Shelf } from "./shelf"

/** All plans of the shelf, the latest first. */
export async function listPlans({ connection }: Shelf): Promise<ShelfEntry[]> {
  const entries = await connection.run((database) => database.getAll("entries"))
  return entries.sort((a, b) => b.savedAt.localeCompare(a.savedAt))
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
