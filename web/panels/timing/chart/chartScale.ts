import type { Schedule } from "../../../core/schedule/timing"

/** Pixels of the chart. */
export const rowHeight = 30
export const headHeight = 76
export const labelWidth = 64
const minuteWidth = 11

/** Where a minute of the visit stands across the chart. */
export const at = (min: number) => labelWidth + min * minuteWidth
export const span = (minutes: number) => minutes * minuteWidth

/** The last minute drawn: a full ten after every limit. */
export const lastMinOf = ({ foils }: Schedule) =>
  Math.ceil((Math.max(...foils.map(({ limitAtMin, offAtMin }) => Math.max(limitAtMin, offAtMin))) + 4) / 10) *
  10

export const chartSize = (schedule: Schedule) => ({
  width: at(lastMinOf(schedule)) + 16,
  height: headHeight + schedule.foils.length * rowHeight + 8,
})
