import { noRetention, type Retention, retentionYears } from "../core/cards/retention"
import { isGroup } from "../core/checks/problem"
import type { Shelf } from "./shelf"
import { readSetting } from "./shelfList"

export const retentionKey = "retention"

/** When the salon wants to be asked about old cards; never, until it says so. */
export const readRetention = async (shelf: Shelf): Promise<Retention> =>
  retentionIn(await readSetting(shelf, retentionKey))

export function retentionIn(kept: unknown): Retention {
  if (!isGroup(kept)) return noRetention
  const stays = isGroup(kept.stays) ? Object.entries(kept.stays) : []
  return {
    years: retentionYears.find((years) => years === kept.years) ?? null,
    stays: Object.fromEntries(stays.filter((pair): pair is [string, string] => typeof pair[1] === "string")),
  }
}

/** Changes it as it stands on the disk now, and forgets what was said of cards that are gone. */
export const changeRetention = ({ connection }: Shelf, change: (kept: Retention) => Retention) =>
  connection.run(async (database) => {
    const transaction = database.transaction(["settings", "cards"], "readwrite")
    const settings = transaction.objectStore("settings")
    const [kept, ids] = await Promise.all([
      settings.get(retentionKey),
      transaction.objectStore("cards").getAllKeys(),
    ])
    const next = change(retentionIn(kept))
    const here = new Set(ids)
    const stays = Object.fromEntries(Object.entries(next.stays).filter(([id]) => here.has(id)))
    await Promise.all([settings.put({ ...next, stays }, retentionKey), transaction.done])
    return { ...next, stays }
  })

/** The day each of these cards was written last. */
export async function writtenDays(
  { connection }: Shelf,
  ids: readonly string[],
): Promise<ReadonlyMap<string, string>> {
  const records = await connection.run((database) => Promise.all(ids.map((id) => database.get("cards", id))))
  return new Map(
    records.flatMap((record) => (record ? [[record.id, record.savedAt.slice(0, 10)] as const] : [])),
  )
}
