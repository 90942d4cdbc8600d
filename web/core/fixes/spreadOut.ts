import type { TimedFoil } from "../schedule/scheduleInput"

/**
 * So many foils, as many of the left as of the right and evenly along each side; one of the middle, or of the fuller
 * side, where the count is odd. Empty where that cannot be.
 */
export function spreadOut(foils: readonly TimedFoil[], count: number): TimedFoil[] {
  const on = (side: TimedFoil["side"]) => foils.filter((foil) => (foil.side ?? "centre") === side)
  const [left, right, middle] = [on("left"), on("right"), on("centre")]
  const odd = count % 2
  const fromMiddle = Math.min(middle.length, Math.max(odd, count - left.length - right.length))
  const beside = count - fromMiddle
  const fewer = Math.min(Math.floor(beside / 2), left.length, right.length)
  const fuller = left.length >= right.length ? left : right
  const other = fuller === left ? right : left
  if (beside - fewer > fuller.length || beside - 2 * fewer > mostApart(fuller.length, other.length)) return []
  const chosen = [...evenly(fuller, beside - fewer), ...evenly(other, fewer), ...evenly(middle, fromMiddle)]
  return foils.filter((foil) => chosen.includes(foil))
}

/** Both sides lose alike while the smaller one has foils to lose. */
const mostApart = (fuller: number, other: number) => Math.max(1, fuller - other)

const evenly = (foils: readonly TimedFoil[], count: number) =>
  Array.from({ length: count }, (_, at) => foils[Math.floor(((at + 0.5) * foils.length) / count)])
