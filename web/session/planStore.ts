import { createStore, type StoreApi } from "zustand/vanilla"
import { type Edit, isRefusal } from "../core/document/edit"
import * as history from "../core/document/history"
import { newPlan } from "../core/document/newPlan"
import type { Refusal } from "../core/document/refusal"
import type { Plan } from "../core/document/schema"
import type { Done } from "./words"

/** The open plan with its history, and nothing else. */
export type PlanStore = StoreApi<history.History<Plan, Done>>

export const createPlanStore = (plan: Plan): PlanStore =>
  createStore(() => history.startHistory<Plan, Done>(plan))

/** The plan on the screen. */
export const planStore = createPlanStore(newPlan(new Date()))

/**
 * Makes a change under what the undo menu calls it. Gives the reason when it is refused, null when it is done.
 * Changes with the same key, such as nudges of one foil, are taken back together.
 */
export function edit(
  label: Done,
  change: Edit,
  key: string | null = null,
  store = planStore,
): Refusal | null {
  const before = store.getState()
  const after = change(before.present)
  if (isRefusal(after)) return after
  store.setState(history.commit(before, label, after, key))
  return null
}

export const undo = (store = planStore) => step(history.undo, store)
export const redo = (store = planStore) => step(history.redo, store)

function step(go: typeof history.undo, store: PlanStore) {
  const before = store.getState()
  const after = go<Plan, Done>(before)
  store.setState({ ...after, present: keep(before.present, after.present) })
}

type Keep = (before: Plan, after: Plan) => Plan
let keep: Keep = (_, after) => after

/** Gives what a step back or forth may not take out of a plan: the rules that know it come later than the plan. */
export const keepAcrossSteps = (keeping: Keep) => {
  keep = keeping
}

/** Puts another plan on the screen, with a history of its own. */
export const openInto = (plan: Plan, store = planStore) => store.setState(history.startHistory(plan))
