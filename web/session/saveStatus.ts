import { createStore } from "zustand/vanilla"
import type { NotKept } from "../core/fields/notKept"

/** What the screen says of the plan on it. Until the keeper has come nothing is said to be saved. */
export type SaveStatus = { state: "not-yet" | "saving" | "saved" } | { state: "not-saved"; why: NotKept }

export const saveStatus = createStore<SaveStatus>(() => ({ state: "not-yet" }))

/** Whether leaving now would lose something that was drawn. */
export const isUnsaved = (hasChanges: boolean, { state }: SaveStatus = saveStatus.getState()) =>
  state === "saving" || state === "not-saved" || (state === "not-yet" && hasChanges)
