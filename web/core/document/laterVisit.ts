import { letters } from "../fields/limits"
import { copyOf } from "./newPlan"
import { wholePairs } from "./pairs"
import type { Plan } from "./schema"

const ending = ", another day"

/** A plan with only the foils kept for another day: the same client, head and mixes, and nothing that happened today. A foil whose twin stays behind is single. */
export function laterVisit({ later = [], service: _, earlier: __, alarms: ___, ...plan }: Plan): Plan {
  const name = [...plan.name].slice(0, letters.name - ending.length).join("")
  return { ...copyOf(plan), name: `${name || "Plan"}${ending}`, sections: wholePairs(later) }
}
