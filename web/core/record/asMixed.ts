import { mixings } from "../chair/chairRecord"
import type { Plan } from "../document/schema"
import type { RecordedBowl, RecordedToner, ServiceRecord, ToneZoneName } from "../document/serviceRecord"
import { personOfTap, type RecordPerson } from "./recordPeople"

/** A bowl as it was mixed at the chair, at a minute of the service, and by whom where two worked and the tap says so. */
export type MixedBowl = RecordedBowl & { atMin: number; by: RecordPerson | null }

type Mixed = Plan & { service: { bowls: readonly RecordedBowl[] } }

/** Whether a service was done whose bowls were kept. */
export const isMixed = (plan: Plan): plan is Mixed => Boolean(plan.service?.endedAt && plan.service.bowls)

/** The bowls of a mix as they were mixed at the last service; null where none was done or its bowls were not kept. */
export function bowlsMixed(plan: Plan, mix: string): MixedBowl[] | null {
  if (!isMixed(plan)) return null
  const personOf = personOfTap(plan.service)
  const done = new Map(
    mixings(plan.service.log)
      .flat()
      .map(({ atMs, by }) => [Math.round(atMs), by]),
  )
  return plan.service.bowls.flatMap((bowl) =>
    bowl.mix === mix && bowl.mixedAtMs !== null
      ? [{ ...bowl, atMin: bowl.mixedAtMs / 60_000, by: personOf(done.get(bowl.mixedAtMs)) }]
      : [],
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
  return bowlsOfToner(service.toners).flatMap(({ own }) => {
    const [{ productG, clearG, developerG }] = own
    const used = own.filter(({ onAtMs, product }) => onAtMs !== null && product !== null)
    // The grams of a bowl are told at its first zone, also where that one stayed without toner.
    return used.map((toner, at) => (at === 0 ? { ...toner, productG, clearG, developerG } : toner))
  })
}

/** A bowl of toner as it was mixed: its grams, what is left of it, and where among the service's toners they stand. */
export type MixedToner = {
  at: number
  product: string
  zones: readonly ToneZoneName[]
  productG: number
  clearG: number
  developerG: number
  leftG: number | null
}

/** The bowls of toner of which at least one zone went on; those of a shade share one, told at their first. */
export function tonerBowlsMixed({ toners = [] }: Pick<ServiceRecord, "toners">): MixedToner[] {
  return bowlsOfToner(toners).flatMap(({ at, own }) => {
    const [{ product, productG, clearG = 0, developerG, leftG = null }] = own
    const isOn = own.some(({ onAtMs }) => onAtMs !== null)
    if (!isOn || product === null || productG === null) return []
    const zones = own.map(({ zone }) => zone)
    return [{ at, product, zones, productG, clearG, developerG: developerG ?? 0, leftG }]
  })
}

/** Zones that share a bowl stand together: the first has its grams. */
function bowlsOfToner(toners: readonly RecordedToner[]): { at: number; own: RecordedToner[] }[] {
  const groups: { at: number; own: RecordedToner[] }[] = []
  for (const [at, toner] of toners.entries()) {
    const last = groups.at(-1)
    if (last && toner.productG === null && toner.product === last.own[0].product) last.own.push(toner)
    else groups.push({ at, own: [toner] })
  }
  return groups
}
