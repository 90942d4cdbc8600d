import type { Schedule } from "../../../core/schedule/timing"

/** Pixels of the chart. */
export const rowHeight = 30
export const headHeight = 76
export const labelWidth = 64
const rightWidth = 16
/** Narrower, and two minutes are one stroke: then the chart scrolls. */
const leastMinuteWidth = 3.2

/** Where a minute of the visit stands across the chart, and back. */
export type ChartScale = {
  at: (min: number) => number
  span: (minutes: number) => number
  minuteAt: (x: number) => number
  lastMin: number
  width: number
  height: number
}

/** The chart as wide as the page that it stands on. */
export function chartScale(schedule: Schedule, pageWidth: number): ChartScale {
  const lastMin = lastMinOf(schedule)
  const minuteWidth = Math.max(leastMinuteWidth, (pageWidth - labelWidth - rightWidth) / lastMin)
  const at = (min: number) => labelWidth + min * minuteWidth
  return {
    at,
    span: (minutes) => minutes * minuteWidth,
    minuteAt: (x) => (x - labelWidth) / minuteWidth,
    lastMin,
    width: at(lastMin) + rightWidth,
    height: headHeight + schedule.foils.length * rowHeight + 8,
  }
}

/** The last minute drawn: a full ten after every limit. */
const lastMinOf = ({ foils }: Schedule) =>
  Math.ceil((Math.max(...foils.map(({ limitAtMin, offAtMin }) => Math.max(limitAtMin, offAtMin))) + 4) / 10) *
  10
