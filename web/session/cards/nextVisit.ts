import { withStanding } from "../../core/cards/withStanding"
import type { Plan } from "../../core/document/schema"
import { nextService } from "../../core/record/nextService"
import { dayIn } from "../../core/text/zonedTime"
import { browserShelf } from "../../storage/browserShelf"
import { readCard } from "../../storage/cards"
import { cardOfPlan, putOnCard } from "../../storage/cardVisits"
import { type Kept, openKept, type Shelf, takeIn } from "../../storage/shelf"
import { nowHere } from "../nowHere"
import { openInto, type PlanStore, planStore } from "../planStore"
import { sessionStore } from "../sessionStore"

/** The day by the calendar on this wall. */
export function todayHere(): string {
  const { moment, zone } = nowHere()
  return dayIn(zone, Date.parse(moment))
}

/** A plan for the visit after this one, on the same card, put on the screen where the questions are asked. */
export async function openNextVisit(
  plan: Plan,
  day: string = todayHere(),
  { store, shelf }: { store: PlanStore; shelf: Shelf } = { store: planStore, shelf: browserShelf },
): Promise<Kept> {
  const cardId = await cardOfPlan(shelf, plan.id)
  const card = cardId === null ? null : await readCard(shelf, cardId)
  const next = nextService(plan, day, nowHere().zone)
  const { plan: put, kept } = await takeIn(
    shelf,
    card?.ok ? withStanding(next, card.kept.card.allergies) : next,
  )
  if (kept.state !== "saved") return kept
  if (cardId !== null) await putOnCard(shelf, put.id, cardId)
  const opened = await openKept(shelf, put.id)
  if (!opened.ok) return { state: "not-saved", why: { code: "unreadable", problem: opened.problems[0] } }
  openInto(opened.plan, store)
  sessionStore.setState({ screen: "client" })
  return kept
}

/** The same from the plan of a card that is not on the screen. */
export async function openNextOf(planId: string, shelf: Shelf = browserShelf): Promise<Kept> {
  const { present } = planStore.getState()
  const opened = present.id === planId ? { ok: true as const, plan: present } : await openKept(shelf, planId)
  return opened.ok
    ? openNextVisit(opened.plan, todayHere(), { store: planStore, shelf })
    : { state: "not-saved", why: { code: "unreadable", problem: opened.problems[0] } }
}
