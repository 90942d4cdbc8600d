import type { Range } from "../../../geometry/hair/tradeFigures"
import { aheadMin } from "../../../presets/timing/pace"
import type { Service, TimedFoil } from "./scheduleInput"
import type { FoilTimes, Schedule } from "./timing"

/** Something in the clock that cannot be left as it is: what, at which foils (ids), and by how many minutes. */
export type Conflict = ConflictCode & { foils: readonly string[]; byMin: number }
export type ConflictRule = ConflictCode["code"]

/** A foil is its number on the map, the one that is worst off; "others" counts those that share its fault. */
export type ConflictCode =
  | { code: "over-run"; foil: number; limitMin: number; overMin: number; others: number }
  /** Minutes it is expected to need; null where it is not expected to be ready at all. */
  | { code: "under-processed"; foil: number; onMin: number; needsMin: number | null; others: number }
  /** Minutes before the back; null where the back is not expected to be ready. */
  | { code: "hairline-ahead"; waitMin: number | null }
  | { code: "pot-life"; mix: string; agedMin: number; potLifeMin: number }
  | { code: "booking"; chairMin: Range; bookingMin: number }

type Late = { times: FoilTimes; byMin: number }

/** All conflicts of a schedule, at most one a rule. What has already come off is no longer judged. */
export function findConflicts(service: Service, schedule: Schedule): Conflict[] {
  const open = schedule.foils.filter(({ id }) => service.soFar?.offAtMin[id] === undefined)
  return [
    overRun(open, service),
    underProcessed(open, service),
    hairlineAhead(service, open),
    potLife(schedule),
    booking(service, schedule),
  ].filter((conflict) => conflict !== null)
}

function overRun(foils: readonly FoilTimes[], service: Service): Conflict | null {
  const late = over(foils, ({ offAtMin, limitAtMin }) => offAtMin - limitAtMin)
  if (late.length === 0) return null
  const [{ times, byMin }] = late
  const limitMin = times.limitAtMin - times.onAtMin
  const foil = numberOf(service, times)
  return at(late, { code: "over-run", foil, limitMin, overMin: byMin, others: late.length - 1 })
}

function underProcessed(foils: readonly FoilTimes[], service: Service): Conflict | null {
  const early = over(foils, ({ onMin, readyMin }) => readyMin.mid - onMin)
  if (early.length === 0) return null
  const [{ times }] = early
  const needsMin = finite(times.readyMin.mid)
  const foil = numberOf(service, times)
  return at(early, { code: "under-processed", foil, onMin: times.onMin, needsMin, others: early.length - 1 })
}

/** With one rinse, hairline hair that is ready well before the back goes on lightening; hairline by where its hair lies. */
function hairlineAhead({ foils, rinse }: Service, open: readonly FoilTimes[]): Conflict | null {
  if (rinse === "each") return null
  const openAmong = (own: readonly TimedFoil[]) => {
    const ids = new Set(own.map(({ id }) => id))
    return open.filter(({ id }) => ids.has(id))
  }
  const back = openAmong(foils.filter(({ zone }) => zone === "back"))
  const hairline = openAmong(foils.filter(({ zone, atHairline }) => atHairline || zone === "hairline"))
  const backReadyMin = Math.max(...back.map(({ readyAtMin }) => readyAtMin.mid))
  const ahead = over(hairline, ({ readyAtMin }) => backReadyMin - readyAtMin.mid - aheadMin)
  if (ahead.length === 0) return null
  const byMin = ahead[0].byMin + aheadMin
  return { ...at(ahead, { code: "hairline-ahead", waitMin: finite(byMin) }), byMin }
}

function potLife({ bowls }: Schedule): Conflict | null {
  const stale = bowls.filter(({ lastUseMin, useByMin }) => lastUseMin > useByMin + tolerance)
  if (stale.length === 0) return null
  const [{ mix, lastUseMin, mixedAtMin, useByMin }] = stale
  return {
    code: "pot-life",
    mix,
    agedMin: lastUseMin - mixedAtMin,
    potLifeMin: useByMin - mixedAtMin,
    foils: stale.flatMap(({ foils }) => foils),
    byMin: lastUseMin - useByMin,
  }
}

function booking({ bookingMin }: Service, { chairMin, foils }: Schedule): Conflict | null {
  if (bookingMin === null || chairMin.mid <= bookingMin + tolerance) return null
  return {
    code: "booking",
    chairMin,
    bookingMin,
    foils: foils.map(({ id }) => id),
    byMin: chairMin.mid - bookingMin,
  }
}

/** Rounding must not make a conflict of a foil that comes off at its very limit. */
const tolerance = 1e-6

/** Those with minutes over, worst first. */
const over = (foils: readonly FoilTimes[], byMin: (times: FoilTimes) => number): Late[] =>
  foils
    .map((times) => ({ times, byMin: byMin(times) }))
    .filter((late) => late.byMin > tolerance)
    .sort((a, b) => (a.byMin === b.byMin ? 0 : b.byMin - a.byMin))

const at = (late: readonly Late[], code: ConflictCode): Conflict => ({
  ...code,
  foils: late.map(({ times }) => times.id),
  byMin: late[0].byMin,
})

const numberOf = ({ foils }: Service, { id }: FoilTimes) =>
  foils.find((foil) => foil.id === id)?.mapNumber ?? 0
const finite = (minutes: number) => (Number.isFinite(minutes) ? minutes : null)
