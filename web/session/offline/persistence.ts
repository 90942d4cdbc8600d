import { createStore } from "zustand/vanilla"
import { saveStatus } from "../saveStatus"

/** Whether the browser spares what is kept here when space runs short; "unknown" where it does not say. */
export type Persistence = "unknown" | "granted" | "refused"

export const persistenceStore = createStore<{ answer: Persistence }>(() => ({ answer: "unknown" }))

/** What the browser has answered before. Asks nobody anything. */
export async function readPersistence(storage = navigator.storage) {
  if (!storage?.persisted) return
  persistenceStore.setState({ answer: (await storage.persisted()) ? "granted" : "refused" })
}

/** Asks the browser to spare what is kept here; some ask the person in turn. */
export async function askToPersist(storage = navigator.storage) {
  if (!storage?.persist) return
  const granted = (await storage.persisted()) || (await storage.persist())
  persistenceStore.setState({ answer: granted ? "granted" : "refused" })
}

/** Asks once the first change of this visit is on the disk: only then is there something to spare. */
export function askAfterFirstSave(status = saveStatus, ask = askToPersist) {
  const stop = status.subscribe((now, before) => {
    if (now.state !== "saved" || before.state === "saved") return
    stop()
    void ask().catch(() => {})
  })
}
