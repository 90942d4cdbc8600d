import { createStore, type StoreApi } from "zustand/vanilla"
import type { Plan } from "../core/document/schema"
import { holds, type Kept, keepPlan, type Shelf } from "../storage/shelf"
import type { PlanStore } from "./planStore"

/** What the screen says of the plan on it. */
export type SaveStatus = Kept | { state: "saving" }

export const saveStatus = createStore<SaveStatus>(() => ({ state: "saved" }))

/** Keeps every change in the tick in which it is made. Gives the way to stop. */
export function startAutosave(store: PlanStore, shelf: Shelf, status: StoreApi<SaveStatus> = saveStatus) {
  const keep = async (plan: Plan) => {
    status.setState({ state: "saving" }, true)
    const kept = await keepPlan(shelf, plan)
    // An older outcome says nothing about the plan now on the screen.
    if (store.getState().present === plan) status.setState(kept, true)
  }
  return store.subscribe(({ present }, before) => {
    if (present === before.present) return
    if (holds(shelf, present)) status.setState({ state: "saved" }, true)
    else void keep(present)
  })
}
