import type { ClockNote } from "../document/serviceRecord"

/**
 * The device's two clocks, read at once. The monotonic one cannot be set, but begins anew with each load of the page
 * and may stand still while the device sleeps; the wall clock goes on, but can be set.
 */
export type Moment = { load: string; monotonicMs: number; wallMs: number }

/** Time gone by, and what is odd about it. */
export type Gap = { ms: number; note: ClockNote | null }

/** The two clocks never agree to the millisecond. */
const agreeMs = 2000

/** Time between two readings. Where it is in doubt the longer is counted: a limit may come early, never late. */
export function timeBetween(before: Moment, now: Moment): Gap {
  const wallMs = now.wallMs - before.wallMs
  const isSameLoad = now.load === before.load && now.monotonicMs >= before.monotonicMs
  return isSameLoad ? sameLoad(now.monotonicMs - before.monotonicMs, wallMs) : acrossLoads(wallMs)
}

function sameLoad(monotonicMs: number, wallMs: number): Gap {
  const aheadMs = wallMs - monotonicMs
  if (aheadMs < -agreeMs) return { ms: monotonicMs, note: { code: "clock-set-back", byMs: -aheadMs } }
  if (aheadMs > agreeMs) return { ms: wallMs, note: { code: "slept-or-set-forward", byMs: aheadMs } }
  return { ms: Math.max(monotonicMs, wallMs), note: null }
}

/** Over a reload only the wall clock bears witness. */
function acrossLoads(wallMs: number): Gap {
  if (wallMs >= 0) return { ms: wallMs, note: null }
  return { ms: 0, note: { code: "set-back-while-closed", byMs: -wallMs } }
}
