import { createStore } from "zustand/vanilla"
import { emptySalonShelf, readSalonShelf, type SalonShelf } from "../core/weighing/salonRecord"
import { browserShelf } from "../storage/browserShelf"
import type { Shelf } from "../storage/shelf"
import { whyNotKept } from "../storage/shelfWords"

/** The salon's own things as this window last read them, and why the last change was not kept. */
export const salonStore = createStore<{ salon: SalonShelf; fault: string }>(() => ({
  salon: emptySalonShelf(),
  fault: "",
}))

const key = "salon"
const asideKey = "salon-aside"
const unreadable =
  "What the salon kept in this browser cannot be read. It is set aside with the next change, and new lists begin."

/** Reads the salon's things. What cannot be read is set aside as it is, not thrown away. */
export async function readSalon({ connection }: Shelf = browserShelf): Promise<SalonShelf> {
  try {
    const kept = await connection.run((database) => database.get("settings", key))
    const known = readSalonShelf(kept)
    const salon = known ?? emptySalonShelf()
    salonStore.setState({ salon, fault: known || kept === undefined ? "" : unreadable })
    return salon
  } catch (error) {
    salonStore.setState({ fault: whyNotKept(error) })
    return salonStore.getState().salon
  }
}

/** Changes the salon's things as they are on the disk now, whichever window wrote them last. */
export async function changeSalon(
  change: (salon: SalonShelf) => SalonShelf,
  { connection }: Shelf = browserShelf,
): Promise<SalonShelf> {
  const shown = change(salonStore.getState().salon)
  salonStore.setState({ salon: shown })
  try {
    const salon = await connection.run(async (database) => {
      const transaction = database.transaction("settings", "readwrite", { durability: "strict" })
      const kept = await transaction.store.get(key)
      const known = readSalonShelf(kept)
      if (kept !== undefined && !known) await transaction.store.put(kept, asideKey)
      const next = change(known ?? emptySalonShelf())
      await Promise.all([transaction.store.put(next, key), transaction.done])
      return next
    })
    salonStore.setState({ salon, fault: "" })
    return salon
  } catch (error) {
    salonStore.setState({ fault: whyNotKept(error) })
    return shown
  }
}
