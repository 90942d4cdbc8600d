import type { Range } from "../../../geometry/hair/tradeFigures"

/** A minute of the visit, counted from the first parting. */
export const minutesText = (min: number) => `minute ${Math.round(min)}`

/** A stretch of time, to five minutes: "1 h 40 to 2 h 25". */
export const spanText = ({ low, high }: Range) => `${hoursText(low)} to ${hoursText(high)}`

export function hoursText(min: number) {
  const rounded = Math.round(min / 5) * 5
  const hours = Math.floor(rounded / 60)
  const rest = rounded % 60
  if (hours === 0) return `${rest} min`
  return rest === 0 ? `${hours} h` : `${hours} h ${rest}`
}

/** Two minutes with a word between, the same one said once. */
export const rangeText = ({ low, high }: Range) =>
  Number.isFinite(high) ? `${Math.round(low)}–${Math.round(high)}` : `${Math.round(low)} or never`
