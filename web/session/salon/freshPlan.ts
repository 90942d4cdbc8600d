import { newPlan } from "../../core/document/newPlan"
import type { Plan } from "../../core/document/schema"
import { isEmptySalon, salonForPlans } from "../../core/weighing/salonOfPlan"
import type { Shelf } from "../../storage/shelf"
import { readSalon } from "./salonShelf"

/** An empty plan that goes by what the salon keeps: its sheets, bottles, prices and learnt figures. */
export async function freshPlan(shelf: Shelf): Promise<Plan> {
  const salon = salonForPlans(await readSalon(shelf))
  return isEmptySalon(salon) ? newPlan(new Date()) : { ...newPlan(new Date()), salon }
}
