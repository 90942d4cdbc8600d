import type { Plan } from "../../core/document/schema"
import { laterVisit } from "../../core/document/visits"
import { letGoOf } from "../../core/edits/plan/keepForAnotherDay"
import { nameWithin } from "../../core/fields/nameWithin"
import type { NotKept } from "../../core/fields/notKept"
import { type Done, words } from "../../session/words"
import { type Desk, planTitle, putBeside } from "../plans/shelfActions"

const label = { chapter: "timing", code: "own-visit" } satisfies Done

/** What the plan of another day is called. */
export const anotherDayName = (plan: Plan) => nameWithin(planTitle(plan), words().timing.setAside.planName)

/** The plan on the shelf that took over the foils of another day; or why there is none. */
export type OwnVisit = { ok: true; id: string; name: string } | { ok: false; why: NotKept }

/**
 * Puts the foils kept for another day on the shelf as a plan of their own, and takes them out of today's: that one stays
 * on the screen, where one undo brings them back. Nothing leaves it before the other plan is on the disk.
 */
export async function moveToOwnVisit(desk: Desk, plan: Plan): Promise<OwnVisit> {
  const visit = laterVisit(plan, anotherDayName(plan))
  const change = letGoOf(visit.sections.map(({ id }) => id))
  const put = await putBeside(desk, plan, visit, { label, change })
  return put.ok ? { ok: true, id: put.plan.id, name: planTitle(put.plan) } : put
}
