import { isGroup } from "./problem"

/** What a file keeps of a number: 5 decimals, of which the last is under a thousandth of a millimetre on the scalp. */
const kept = 1e5

/** Every number in a value as a file keeps it. */
export function roundNumbers(value: unknown): unknown {
  if (typeof value === "number") return roundNumber(value)
  if (Array.isArray(value)) return value.map(roundNumbers)
  if (!isGroup(value)) return value
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, roundNumbers(part)]))
}

/** Away from nothing, so that both sides of a head are rounded alike; never -0. */
const roundNumber = (value: number) => (Math.sign(value) * Math.round(Math.abs(value) * kept)) / kept + 0
