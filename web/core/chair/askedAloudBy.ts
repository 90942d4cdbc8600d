import type { Plan } from "../document/schema"
import { dayIn, momentMs, type Now } from "../text/zonedTime"

/** Who signed today that what was open was asked aloud; a signature of another day is of another visit. */
export function askedAloudBy({ consultation }: Pick<Plan, "consultation">, now: Now): string | null {
  const dayOf = (moment: string) => {
    const ms = momentMs(moment)
    return ms === null ? null : dayIn(now.zone, ms)
  }
  const today = dayOf(now.moment)
  const signed = (consultation?.signatures ?? []).filter(({ at }) => today !== null && dayOf(at) === today)
  return signed.at(-1)?.by ?? null
}
