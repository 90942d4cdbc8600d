import type { Plan } from "../../core/document/schema"
import { laterVisit } from "../../core/document/visits"
import { letGoOf } from "../../core/edits/plan/keepForAnotherDay"
import { nameWithin } from "../../core/fields/nameWithin"
import type { NotKept } from "../../core/fields/notKept"
import { announce } from "../../session/announcements"
import { edit } from "../../session/planStore"
import { type Done, doneWords, words } from "../../session/words"
import { takeIn } from "../../storage/shelf"
import { keepSetting } from "../../storage/shelfList"
import { type Desk, planTitle } from "../plans/shelfActions"

const label = { chapter: "timing", code: "own-visit" } satisfies Done

/** What the plan of another day is called. */
export const anotherDayName = (plan: Plan) => nameWithin(planTitle(plan), words().timing.setAside.planName)

/** The plan on the shelf that took over the foils of another day; or why there is none. */
export type OwnVisit = { ok: true; id: string; name: string } | { ok: false; why: NotKept }

/**
 * Puts the foils kept for another day on the shelf as a plan of their own, and takes them out of today's: that one stays
 * on the screen, where one undo brings them back. Nothing leaves it before the other plan is on the disk.
 */
export async function moveToOwnVisit({ store, shelf }: Desk, plan: Plan): Promise<OwnVisit> {
  const { plan: visit, kept } = await takeIn(shelf, laterVisit(plan, anotherDayName(plan)))
  if (kept.state !== "saved") return { ok: false, why: kept.why }
  const { present } = store.getState()
  await keepSetting(shelf, "lastPlan", present.id)
  const ids = visit.sections.map(({ id }) => id)
  if (present.id === plan.id && edit(label, letGoOf(ids), null, store) === null) announce(doneWords(label))
  return { ok: true, id: visit.id, name: planTitle(visit) }
}
