import { isGroup } from "../../core/checks/problem"
import {
  emptySalonShelf,
  joinedSalon,
  readSalonShelf,
  type SalonShelf,
} from "../../core/weighing/salonRecord"
import { browserShelf } from "../../storage/browserShelf"
import type { Shelf } from "../../storage/shelf"
import { keepSetting, readSetting } from "../../storage/shelfList"
import { changeSalon, salonAsideKey } from "./salonShelf"

/** What of the salon's things could not be read, each as it was written. */
export async function listSalonAside(shelf: Shelf = browserShelf): Promise<readonly unknown[]> {
  const aside = await readSetting(shelf, salonAsideKey)
  return Array.isArray(aside) ? aside : []
}

/** Tries again what was set aside: what can be read by now goes back among the salon's things. Gives what is left. */
export async function retrySalonAside(shelf: Shelf = browserShelf): Promise<readonly unknown[]> {
  const read = (await listSalonAside(shelf)).map((entry) => ({ entry, salon: salonWith(entry) }))
  const left = read.filter(({ salon }) => salon === null).map(({ entry }) => entry)
  if (left.length === read.length) return left
  await changeSalon(
    (here) => read.reduce((all, { salon }) => (salon ? joinedSalon(all, salon) : all), here),
    shelf,
  )
  await keepSetting(shelf, salonAsideKey, left)
  return left
}

/** An otherwise empty salon with what was set aside in its place; null where that still cannot be read. */
function salonWith(entry: unknown): SalonShelf | null {
  const { field, value } = isGroup(entry) ? entry : {}
  const fresh: Record<PropertyKey, unknown> = emptySalonShelf()
  if (typeof field !== "string") return null
  const isRow = Array.isArray(fresh[field]) && !Array.isArray(value)
  const { salon, unread } = readSalonShelf({ ...fresh, [field]: isRow ? [value] : value })
  return unread.length === 0 ? salon : null
}
