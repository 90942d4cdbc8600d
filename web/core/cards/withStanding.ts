import type { StandingAllergy } from "../document/consultation"
import type { Plan } from "../document/schema"

/** A plan with what stands on its client's card; the same one where it has it. */
export function withStanding(plan: Plan, allergies: readonly StandingAllergy[]): Plan {
  const { allergies: had = [], ...client } = plan.client
  if (JSON.stringify(had) === JSON.stringify(allergies)) return plan
  return { ...plan, client: allergies.length > 0 ? { ...client, allergies } : client }
}
