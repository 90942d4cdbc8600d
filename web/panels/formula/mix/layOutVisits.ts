import { secondVisit, secondVisitDay } from "../../../core/bowls/secondVisit"
import { visitsOfPlan } from "../../../core/bowls/visits"
import { daysOf } from "../../../core/cautions/asking/questions"
import type { Plan } from "../../../core/document/schema"
import { planToday } from "../../../core/edits/plan/planToday"
import { nameWithin } from "../../../core/fields/nameWithin"
import type { NotKept } from "../../../core/fields/notKept"
import { nowHere } from "../../../session/nowHere"
import { undo } from "../../../session/planStore"
import { type Done, words } from "../../../session/words"
import { removePlan } from "../../../storage/bin"
import { type Desk, planTitle, putBeside } from "../../plans/shelfActions"

/** Two visits as they were laid out: the plan of the second, and today's as it became. */
export type LaidOut = { id: string; name: string; day: string; today: Plan }

/**
 * Puts the second visit on the shelf as a plan of its own and makes the first of today's, which stays on the screen.
 * Nothing of today's is changed before the other plan is on the disk.
 */
export async function layOutVisits(
  desk: Desk,
  plan: Plan,
): Promise<({ ok: true } & LaidOut) | { ok: false; why: NotKept }> {
  const w = words().formula.mixing.visits
  const [first, ...later] = visitsOfPlan(plan)
  const title = planTitle(plan)
  const from = daysOf(plan, nowHere()).visit
  const day = secondVisitDay(from)
  const name = nameWithin(title, w.name)
  const [next, ...rest] = later
  const note = [w.after({ plan: title, day: from, ...next }), ...rest.map(w.note)].join("\n")
  const label = { chapter: "formula", code: "plan-today", level: first.toLevel } satisfies Done
  const change = planToday(first.toLevel, later.map(w.note).join("\n"))
  const put = await putBeside(desk, plan, secondVisit(plan, { day, name, note }), { label, change })
  return put.ok ? { ok: true, id: put.plan.id, name, day, today: desk.store.getState().present } : put
}

/** Takes the second visit off the shelf again, into the bin, and today's plan back where nothing was done since. */
export async function takeVisitsBack({ store, shelf }: Desk, { id, today }: LaidOut) {
  await removePlan(shelf, id)
  if (store.getState().present === today) undo(store)
}
