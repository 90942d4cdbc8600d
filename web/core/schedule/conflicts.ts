import { aheadMin } from "../../../presets/timing/pace"
import { numberText } from "../text/numberText"
import type { Service, Zone } from "./scheduleInput"
import type { FoilTimes, Schedule } from "./timing"

/** Something in the clock that cannot be left as it is: why, at which foils, and by how many minutes. */
export type Conflict = { rule: ConflictRule; why: string; foils: readonly string[]; byMin: number }
export type ConflictRule = "over-run" | "under-processed" | "hairline-ahead" | "pot-life" | "booking"

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
  return conflict(
    "over-run",
    late,
    `Foil ${numberOf(service, times)} would pass its longest time of ${said(limitMin)} by ${said(byMin)} before all are ready${others(late)}.`,
  )
}

function underProcessed(foils: readonly FoilTimes[], service: Service): Conflict | null {
  const early = over(foils, ({ onMin, readyMin }) => readyMin.mid - onMin)
  if (early.length === 0) return null
  const [{ times }] = early
  const wants = Number.isFinite(times.readyMin.mid)
    ? `expected to need ${said(times.readyMin.mid)}`
    : "not expected to be ready in time"
  return conflict(
    "under-processed",
    early,
    `Foil ${numberOf(service, times)} would have ${said(times.onMin)} on, and is ${wants}${others(early)}.`,
  )
}

/** With one rinse, hairline hair that is ready well before the back goes on lightening. */
function hairlineAhead({ foils, rinse }: Service, open: readonly FoilTimes[]): Conflict | null {
  if (rinse === "each") return null
  const zones = new Map(foils.map(({ id, zone }) => [id, zone]))
  const inZone = (zone: Zone) => open.filter(({ id }) => zones.get(id) === zone)
  const backReadyMin = Math.max(...inZone("back").map(({ readyAtMin }) => readyAtMin.mid))
  const ahead = over(inZone("hairline"), ({ readyAtMin }) => backReadyMin - readyAtMin.mid - aheadMin)
  if (ahead.length === 0) return null
  const byMin = ahead[0].byMin + aheadMin
  const wait = Number.isFinite(byMin) ? `${said(byMin)} before the back` : "long before the back"
  const why = `The hairline would be ready ${wait}, and stay on until the common rinse.`
  return { ...conflict("hairline-ahead", ahead, why), byMin }
}

function potLife({ bowls }: Schedule): Conflict | null {
  const stale = bowls.filter(({ lastUseMin, useByMin }) => lastUseMin > useByMin + tolerance)
  if (stale.length === 0) return null
  const [{ mix, lastUseMin, mixedAtMin, useByMin }] = stale
  return {
    rule: "pot-life",
    why: `A bowl of mix ${mix} would still be used ${said(lastUseMin - mixedAtMin)} after mixing: it is good for ${said(useByMin - mixedAtMin)}.`,
    foils: stale.flatMap(({ foils }) => foils),
    byMin: lastUseMin - useByMin,
  }
}

function booking({ bookingMin }: Service, { chairMin, foils }: Schedule): Conflict | null {
  if (bookingMin === null || chairMin.mid <= bookingMin + tolerance) return null
  return {
    rule: "booking",
    why: `The service is expected to take ${whole(chairMin.mid)} minutes (${whole(chairMin.low)} to ${whole(chairMin.high)}), and ${said(bookingMin)} are booked.`,
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

const conflict = (rule: ConflictRule, late: readonly Late[], why: string): Conflict => ({
  rule,
  why,
  foils: late.map(({ times }) => times.id),
  byMin: late[0].byMin,
})

const numberOf = ({ foils }: Service, { id }: FoilTimes) => foils.find((foil) => foil.id === id)?.mapNumber
const said = (minutes: number) => `${numberText(minutes, 1)} ${minutes === 1 ? "minute" : "minutes"}`
const whole = (minutes: number) => numberText(minutes, 0)
const others = ({ length }: readonly Late[]) =>
  length === 1 ? "" : `; so would ${length - 1} more ${length === 2 ? "foil" : "foils"}`
