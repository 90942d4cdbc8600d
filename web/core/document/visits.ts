import type { Consultation, HairState } from "./consultation"
import { copyOf } from "./newPlan"
import { wholePairs } from "./pairs"
import type { Plan } from "./schema"
import type { ServiceRecord } from "./serviceRecord"

/**
 * A plan for the visit after the last service: the same head, drawing and mixes, and that service among the earlier
 * ones. What was asked stays with its own day; what is to be asked anew says so by itself. Nothing stays overridden, and
 * of hair that foils were on, what they will have changed is asked again.
 */
export function nextVisit({ service, alarms: _, earlier = [], later: __, ...plan }: Plan, day: string): Plan {
  const { consultation, timing } = plan
  const isFoiled = service !== undefined && hadFoils(service)
  const next: Plan = {
    ...copyOf(plan),
    date: day,
    ...(consultation && {
      consultation: isFoiled
        ? askedAgain(consultation, consultation.liftToLevel)
        : { ...consultation, passes: [] },
    }),
    ...(timing && { timing: { ...timing, lift: isFoiled ? null : timing.lift, strandTest: null } }),
  }
  if (!service) return next
  const { drawn: ___, ...kept } = service
  return { ...next, earlier: [...earlier, kept] }
}

/** Whether any foil was touched, and not by mistake: one that was checked or taken off had gone on. */
const hadFoils = ({ log }: ServiceRecord) =>
  log.some(({ tap, undone }) => !undone && ("foil" in tap || tap.kind === "carried-on"))

/** A plan of this name with only the foils kept for another day: the same client, head and mixes, and nothing that happened or was overridden today. A foil whose twin stays behind is single. */
export function laterVisit(
  { later = [], service: _, earlier: __, alarms: ___, ...plan }: Plan,
  name: string,
): Plan {
  const { consultation } = plan
  return {
    ...copyOf(plan),
    name,
    sections: wholePairs(later),
    ...(consultation && { consultation: { ...consultation, passes: [] } }),
  }
}

/** What is known once hair has been lightened: not how it came out of it, and nothing that was tested or overridden before. */
export const askedAgain = (known: Consultation, liftToLevel: number | null): Consultation => ({
  ...known,
  liftToLevel,
  hair: Object.fromEntries(
    Object.entries(known.hair).map(([zone, parts]) => [
      zone,
      Object.fromEntries(Object.entries(parts).map(([part, state]) => [part, lightenedOnce(state)])),
    ]),
  ),
  scalp: null,
  strandTests: known.strandTests.filter(({ outcome }) => outcome === "failed"),
  passes: [],
})

const lightenedOnce = ({ history }: HairState): HairState => ({
  level: null,
  history: history && [...new Set([...history, "lightened" as const])],
  porosity: null,
  stretch: null,
})
