import { secondVisit, secondVisitDay } from "../../../core/bowls/secondVisit"
import { visitsOfPlan } from "../../../core/bowls/visits"
import { daysOf } from "../../../core/cautions/asking/questions"
import type { Plan } from "../../../core/document/schema"
import { planToday } from "../../../core/edits/plan/planToday"
import { nameWithin } from "../../../core/fields/nameWithin"
import type { NotKept } from "../../../core/fields/notKept"
import { announce } from "../../../session/announcements"
import { nowHere } from "../../../session/nowHere"
import { edit, undo } from "../../../session/planStore"
import { type Done, doneWords, words } from "../../../session/words"
import { removePlan } from "../../../storage/bin"
import { takeIn } from "../../../storage/shelf"
import { keepSetting } from "../../../storage/shelfList"
import { type Desk, planTitle } from "../../plans/shelfActions"

/** Two visits as they were laid out: the plan of the second, and today's as it became. */
export type LaidOut = { id: string; name: string; day: string; today: Plan }

/**
 * Puts the second visit on the shelf as a plan of its own and makes the first of today's, which stays on the screen.
 * Nothing of today's is changed before the other plan is on the disk.
 */
export async function layOutVisits(
  { store, shelf }: Desk,
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
  const { plan: second, kept } = await takeIn(shelf, secondVisit(plan, { day, name, note }))
  if (kept.state !== "saved") return { ok: false, why: kept.why }
  const { present } = store.getState()
  await keepSetting(shelf, "lastPlan", present.id)
  const label = { chapter: "formula", code: "plan-today", level: first.toLevel } satisfies Done
  const aimed = planToday(first.toLevel, later.map(w.note).join("\n"))
  if (present.id === plan.id && edit(label, aimed, null, store) === null) announce(doneWords(label))
  return { ok: true, id: second.id, name, day, today: store.getState().present }
}

/** Takes the second visit off the shelf again, into the bin, and today's plan back where nothing was done since. */
export async function takeVisitsBack({ store, shelf }: Desk, { id, today }: LaidOut) {
  await removePlan(shelf, id)
  if (store.getState().present === today) undo(store)
}
