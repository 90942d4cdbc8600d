import { isCoatedWith } from "../../../geometry/section/section"
import { shareBowls } from "../schedule/scheduleBowls"
import type { Service, TimedFoil } from "../schedule/scheduleInput"
import type { BowlTimes, Schedule } from "../schedule/timing"
import { planService } from "../schedule/timing"

/** A service in which no bowl is used past its pot life, and the foils at which a bowl is mixed afresh for it. */
export type Afresh = { after: Service; starts: readonly TimedFoil[]; mixes: readonly string[] }

/**
 * Begins a bowl anew at the first foil that one going stale no longer serves in time; null where no split helps: one
 * foil takes longer than the bowl lasts, or the foils are on already.
 */
export function bowlsAfresh(service: Service, schedule: Schedule): Afresh | null {
  let [after, planned] = [service, schedule]
  const starts: TimedFoil[] = []
  const mixes: string[] = []
  for (let bowl = staleBowl(planned); bowl; bowl = staleBowl(planned)) {
    const start = firstTooLate(after, planned, bowl)
    if (!start) return null
    starts.push(start)
    mixes.push(bowl.mix)
    after = splitAt(after, planned, start, bowl.mix)
    planned = planService(after)
  }
  return starts.length > 0 ? { after: withStarts(after, planned), starts, mixes } : null
}

const staleBowl = ({ bowls }: Schedule) =>
  bowls.find(({ lastUseMin, useByMin }) => lastUseMin > useByMin + 1e-6)

function firstTooLate({ foils, soFar }: Service, schedule: Schedule, { foils: served, useByMin }: BowlTimes) {
  const placedAtMin = new Map(schedule.foils.map((times) => [times.id, times.placedAtMin]))
  const late = foils
    .filter(({ id }) => served.includes(id))
    .slice(1)
    .find(({ id }) => (placedAtMin.get(id) ?? 0) > useByMin + 1e-6)
  return late && soFar?.onAtMin[late.id] === undefined ? late : null
}

/** The bowls of that mix as they were up to a foil, and filled anew from it on. */
function splitAt(service: Service, { bowls }: Schedule, { id }: TimedFoil, mix: string): Service {
  const at = service.foils.findIndex((foil) => foil.id === id)
  const rest = service.foils.slice(at).filter((foil) => isCoatedWith(foil, mix))
  const moved = new Set(rest.map((foil) => foil.id))
  const kept = bowls.map((bowl) =>
    bowl.mix === mix
      ? { mix, foils: bowl.foils.filter((foil) => !moved.has(foil)) }
      : { mix: bowl.mix, foils: bowl.foils },
  )
  const anew = shareBowls({ ...service, foils: rest, bowls: null }).filter((bowl) => bowl.mix.id === mix)
  return {
    ...service,
    bowls: [
      ...kept.filter(({ foils }) => foils.length > 0),
      ...anew.map(({ foils }) => ({ mix, foils: foils.map((foil) => foil.id) })),
    ],
  }
}

/**
 * Every bowl keeps its first foil, so that whoever shares the foils out again makes no bowl last longer. A mix' first
 * bowl needs no word, and is not said where it would begin the bowl of another mix anew.
 */
function withStarts(service: Service, { bowls }: Schedule): Service {
  const isFirstOfMix = (bowl: BowlTimes) => bowls.find(({ mix }) => mix === bowl.mix) === bowl
  const isShared = (id: string) => bowls.filter(({ foils }) => foils.includes(id)).length > 1
  const firsts = new Set(
    bowls.filter((bowl) => !(isFirstOfMix(bowl) && isShared(bowl.foils[0]))).map(({ foils }) => foils[0]),
  )
  return {
    ...service,
    foils: service.foils.map((foil) => (firsts.has(foil.id) ? { ...foil, startsBowl: true } : foil)),
  }
}
