import { createStore } from "zustand/vanilla"
import type { NotKept } from "../../core/fields/notKept"
import { salonProblem } from "../../core/weighing/salonProblem"
import { emptySalonShelf, readSalonShelf, type SalonShelf } from "../../core/weighing/salonRecord"
import { browserShelf } from "../../storage/browserShelf"
import { NotKeptError, whyNotKept } from "../../storage/notKept"
import type { Shelf } from "../../storage/shelf"

/** The salon's own things as this window last read them, and why the last change was not kept. */
export const salonStore = createStore<{ salon: SalonShelf; fault: NotKept | null }>(() => ({
  salon: emptySalonShelf(),
  fault: null,
}))

const key = "salon"
export const salonAsideKey = "salon-aside"

/** Reads the salon's things. What cannot be read is set aside as it is, row by row, and tried again each time. */
export async function readSalon({ connection }: Shelf = browserShelf): Promise<SalonShelf> {
  try {
    const kept = await connection.run((database) => database.get("settings", key))
    const { salon, unread } = readSalonShelf(kept)
    salonStore.setState({ salon, fault: unread.length > 0 ? { code: "salon-unreadable" } : null })
    return salon
  } catch (error) {
    salonStore.setState({ fault: whyNotKept(error, "salon") })
    return salonStore.getState().salon
  }
}

/** Changes the salon's things as they are on the disk now, whichever window wrote them last. Nothing is written that would not be read again. */
export async function changeSalon(
  change: (salon: SalonShelf) => SalonShelf,
  { connection }: Shelf = browserShelf,
): Promise<SalonShelf> {
  const before = salonStore.getState().salon
  try {
    salonStore.setState({ salon: checked(change(before)) })
    const salon = await connection.run(async (database) => {
      const transaction = database.transaction("settings", "readwrite", { durability: "strict" })
      const [kept, aside] = await Promise.all([
        transaction.store.get(key),
        transaction.store.get(salonAsideKey),
      ])
      const { salon, unread } = readSalonShelf(kept)
      const next = checked(change(salon))
      if (unread.length > 0) void transaction.store.put([...asideOf(aside), ...unread], salonAsideKey)
      await Promise.all([transaction.store.put(next, key), transaction.done])
      return next
    })
    salonStore.setState({ salon, fault: null })
    return salon
  } catch (error) {
    const isRefused = error instanceof NotKeptError
    salonStore.setState({ fault: whyNotKept(error, "salon"), ...(isRefused && { salon: before }) })
    return salonStore.getState().salon
  }
}

/** What was set aside before now; a shelf of an older Partline kept one thing, and no list. */
const asideOf = (aside: unknown): readonly unknown[] =>
  aside === undefined ? [] : Array.isArray(aside) ? aside : [aside]

function checked(salon: SalonShelf): SalonShelf {
  const problem = salonProblem(salon)
  if (problem) throw new NotKeptError({ code: "not-in-order", what: "salon", problem })
  return salon
}
