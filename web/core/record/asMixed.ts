import type { Plan } from "../document/schema"
import type { RecordedBowl, RecordedToner } from "../document/serviceRecord"

/** A bowl as it was mixed at the chair, at a minute of the service. */
export type MixedBowl = RecordedBowl & { atMin: number }

type Mixed = Plan & { service: { bowls: readonly RecordedBowl[] } }

/** Whether a service was done whose bowls were kept. */
export const isMixed = (plan: Plan): plan is Mixed => Boolean(plan.service?.endedAt && plan.service.bowls)

/** The bowls of a mix as they were mixed at the last service; null where none was done or its bowls were not kept. */
export function bowlsMixed(plan: Plan, mix: string): MixedBowl[] | null {
  if (!isMixed(plan)) return null
  return plan.service.bowls.flatMap((bowl) =>
    bowl.mix === mix && bowl.mixedAtMs !== null ? [{ ...bowl, atMin: bowl.mixedAtMs / 60_000 }] : [],
  )
}

/** The letters of all that was mixed at the last service, also of a mix that no foil uses any more. */
export const mixesMixed = (plan: Plan): string[] =>
  isMixed(plan)
    ? [...new Set(plan.service.bowls.flatMap(({ mix, mixedAtMs }) => (mixedAtMs === null ? [] : [mix])))]
    : []

/** What was left of a mix on the scale, g; null where nobody has weighed. */
export function leftOf(plan: Plan, mix: string): number | null {
  const weighed = (bowlsMixed(plan, mix) ?? []).flatMap(({ leftG }) => leftG ?? [])
  return weighed.length > 0 ? weighed.reduce((sum, grams) => sum + grams, 0) : null
}

/** The toners that went on at the last service; null where none was done or its toners were not kept. */
export function tonersUsed({ service }: Plan): RecordedToner[] | null {
  if (!service?.endedAt || !service.toners) return null
  return service.toners.filter(({ onAtMs, product }) => onAtMs !== null && product !== null)
}
