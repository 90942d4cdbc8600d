import { type Kept, keepPlan, openKept, type Shelf } from "./shelf"
import type { PlanRecord } from "./shelfDatabase"
import { isRecord, removeRecord } from "./shelfRecords"

/** What a list of plans shows of each. */
export type ShelfEntry = Pick<PlanRecord, "id" | "name" | "initials" | "savedAt">

/** All plans of the shelf, the latest first. */
export async function listPlans({ connection }: Shelf): Promise<ShelfEntry[]> {
  const records = await connection.run((database) => database.getAll("plans"))
  return records
    .filter(isRecord)
    .map(({ id, name, initials, savedAt }) => ({ id, name, initials, savedAt }))
    .sort((a, b) => b.savedAt.localeCompare(a.savedAt))
}

/** Gives a plan another name while it is not on the screen; the one on the screen is renamed by an edit. */
export async function renamePlan(shelf: Shelf, id: string, name: string): Promise<Kept> {
  const opened = await openKept(shelf, id)
  if (!opened.ok) return { state: "not-saved", why: opened.problems[0].expected }
  return keepPlan(shelf, { ...opened.plan, name })
}

/** Takes a plan off the shelf, and gives the way to put it back. */
export async function removePlan(shelf: Shelf, id: string): Promise<() => Promise<void>> {
  const { record, service } = await shelf.connection.run((database) => removeRecord(database, id))
  shelf.standing.delete(id)
  return async () => {
    if (record) await shelf.connection.run((database) => database.put("plans", record))
    if (service) await shelf.connection.run((database) => database.put("services", service))
  }
}

/** What could not be read and was set aside, as it was written. */
export const listAside = ({ connection }: Shelf): Promise<unknown[]> =>
  connection.run((database) => database.getAll("aside"))

/** A choice kept beside the plans, such as the hand the screen is laid out for. */
export const readSetting = ({ connection }: Shelf, name: string): Promise<unknown> =>
  connection.run((database) => database.get("settings", name))

export const keepSetting = ({ connection }: Shelf, name: string, value: unknown) =>
  connection.run((database) => database.put("settings", value, name))
