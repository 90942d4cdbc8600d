import { laterVisit } from "../../plan/laterVisit"
import { openInto } from "../../plan/planStore"
import type { Plan } from "../../plan/schema"
import { takeIn } from "../../plan/shelf"
import type { Desk } from "../shelfActions"

/** Puts the foils kept for another day on the shelf as a plan of their own, and opens it; today's plan stays as it is. */
export async function openAsOwnVisit({ store, shelf }: Desk, plan: Plan) {
  const { plan: visit } = await takeIn(shelf, laterVisit(plan))
  openInto(visit, store)
}
