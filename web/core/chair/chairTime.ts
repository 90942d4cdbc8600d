import { numberText } from "../text/numberText"

/**
 * The device's two clocks, read at once. The monotonic one cannot be set, but begins anew with each load of the page
 * and may stand still while the device sleeps; the wall clock goes on, but can be set.
 */
export type Moment = { load: string; monotonicMs: number; wallMs: number }

/** Time gone by, and what is odd about it. */
export type Gap = { ms: number; note: string | null }

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
  if (aheadMs < -agreeMs)
    return {
      ms: monotonicMs,
      note: `The device's clock was set back by ${said(-aheadMs)}. The service's clock goes on.`,
    }
  if (aheadMs > agreeMs)
    return {
      ms: wallMs,
      note: `The device slept for ${said(aheadMs)}, or its clock was set forward. The longer time is counted.`,
    }
  return { ms: Math.max(monotonicMs, wallMs), note: null }
}

/** Over a reload only the wall clock bears witness. */
function acrossLoads(wallMs: number): Gap {
  if (wallMs >= 0) return { ms: wallMs, note: null }
  return {
    ms: 0,
    note: `The device's clock was set back by at least ${said(-wallMs)} while this page was closed. Look at every foil now: its time on may be longer than shown.`,
  }
}

function said(ms: number): string {
  const minutes = ms / 60_000
  if (minutes < 1) return `${numberText(ms / 1000, 0)} seconds`
  return minutes < 60 ? `${numberText(minutes, 0)} minutes` : `${numberText(minutes / 60, 1)} hours`
}
