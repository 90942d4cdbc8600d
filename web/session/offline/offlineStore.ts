import { createStore } from "zustand/vanilla"

/** Whether this device holds the whole app, and how to change to the newer build that waits, where one does. */
export type Offline = {
  kept: "unknown" | "keeping" | "kept" | "failed"
  update: Update | null
}

/** Changes every window to the newer build; refused while another window must not be disturbed. */
export type Update = { takeOver(): Promise<"taken" | "refused"> }

export const offlineStore = createStore<Offline>(() => ({ kept: "unknown", update: null }))
