import { problemsOf } from "../checks/problem"
import { newSalon } from "../document/salon"
import { salonSchema } from "../document/salonSchema"
import type { Problem } from "../fields/problem"
import { salonForPlans } from "./salonOfPlan"
import { type SalonShelf, salonShelfSchema } from "./salonRecord"

/** What keeps a salon's things from being read again, with what they would teach a plan; null where nothing does. */
export function salonProblem(salon: SalonShelf): Problem | null {
  const parsed = salonShelfSchema.safeParse(salon)
  if (!parsed.success) return problemsOf(parsed.error.issues[0], salon)[0]
  const { learnt } = salonForPlans(salon)
  const taught = salonSchema.safeParse({ ...newSalon(), learnt })
  if (taught.success) return null
  const [worst] = salon.weighings
    .map((row, i) => ({ i, perCm2: row.productG / Math.max(row.strandAreaCm2, 1e-6) }))
    .sort((a, b) => b.perCm2 - a.perCm2)
  return {
    ...problemsOf(taught.error.issues[0], { learnt })[0],
    path: `weighings[${worst.i}].productG`,
  }
}
