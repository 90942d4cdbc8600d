import { visitWeeks } from "../../../presets/formula/developers"
import { copyOf } from "../document/newPlan"
import type { Mix, Plan } from "../document/schema"
import { askedAgain } from "../document/visits"
import { dayAfter } from "../text/dayAfter"
import { mixesOfPlan } from "./mixesOfPlan"
import { visitsOfPlan } from "./visits"

/** The earliest day of the next visit: the hair rests so many weeks first (common practice). */
export const secondVisitDay = (firstDay: string) => dayAfter(firstDay, 7 * visitWeeks.range[0])

/**
 * The second of the visits that the lift wanted takes, as a plan of its own: the same head and sections, the aim and the
 * mixes of that visit, never stronger than today's. What today will have changed is not known and is asked again: the
 * level, how the hair takes it up and stretches, the tests made on it, and whatever was overridden.
 */
export function secondVisit(
  plan: Plan,
  { day, name, note }: Pick<Plan, "name" | "note"> & { day: string },
): Plan {
  const [, second] = visitsOfPlan(plan)
  if (!second) throw new Error("One visit gives the lift wanted")
  const { service: _, earlier: __, alarms: ___, later: ____, consultation, timing, ...kept } = plan
  return {
    ...copyOf(kept),
    name,
    note,
    date: day,
    mixes: plan.mixes.map((mix) => ({ ...mix, developerVolume: volumeNext(mix, plan) })),
    ...(consultation && { consultation: askedAgain(consultation, second.toLevel) }),
    ...(timing && { timing: { ...timing, lift: null, strandTest: null } }),
  }
}

function volumeNext({ id, developerVolume }: Mix, plan: Plan): number {
  const proposed = mixesOfPlan(plan).find(({ mix }) => mix.id === id)?.proposed
  const next = proposed?.kind === "stages" ? proposed.stages[1] : undefined
  return next ? Math.min(developerVolume, next.volume) : developerVolume
}
