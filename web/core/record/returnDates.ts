import type { Figure } from "../../../presets/figure/figure"
import { returnWeeks } from "../../../presets/sheets/aftercare"
import { visitLimits } from "../../../presets/timing/visitLimits"
import { dayAfter } from "../text/dayAfter"

/** Days of the calendar, "2026-03-09", from the first to the last that suits. */
export type Days = { from: string; to: string }

/** When a client comes back, counted from the day of the service; the alert test is on the skin by `testBy`. */
export type Returns = { toner: Days | null; frame: Days; testBy: string }

export function returnDates(serviceDay: string, isToned: boolean): Returns {
  const frame = after(serviceDay, returnWeeks.frame)
  const toner = isToned ? after(serviceDay, returnWeeks.toner) : null
  return { toner, frame, testBy: testDayFor((toner ?? frame).from) }
}

/** The last day on which the alert test of a visit may be put on the skin. */
export const testDayFor = (visitDay: string) =>
  dayAfter(visitDay, -Math.ceil(visitLimits.alertTestHours / 24))

const after = (day: string, { range: [least, most] }: Figure): Days => ({
  from: dayAfter(day, 7 * least),
  to: dayAfter(day, 7 * most),
})
