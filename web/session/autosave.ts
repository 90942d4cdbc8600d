import type { StoreApi } from "zustand/vanilla"
import type { Plan } from "../core/document/schema"
import { holds, keepPlan, type Shelf } from "../storage/shelf"
import type { PlanStore } from "./planStore"
import { type SaveStatus, saveStatus } from "./saveStatus"

/** Keeps every change in the tick in which it is made, and what was changed before it came. Gives the way to stop. */
export function startAutosave(store: PlanStore, shelf: Shelf, status: StoreApi<SaveStatus> = saveStatus) {
  const keep = async (plan: Plan) => {
    status.setState({ state: "saving" }, true)
    const kept = await keepPlan(shelf, plan)
    // An older outcome says nothing about the plan now on the screen.
    if (store.getState().present === plan) status.setState(kept, true)
  }
  const { present, past, future } = store.getState()
  if (past.length > 0 || future.length > 0) void keep(present)
  return store.subscribe(({ present }, before) => {
    if (present === before.present) return
    if (holds(shelf, present)) status.setState({ state: "saved" }, true)
    else void keep(present)
  })
}
