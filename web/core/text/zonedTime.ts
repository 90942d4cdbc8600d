/**
 * Moments and clocks. A moment is ISO 8601 with its offset ("2026-03-28T10:00:00+00:00" or "...Z"), so that hours
 * between moments are true hours; a clock time is what a wall clock shows, "2026-03-28T10:00".
 */
/** When it is and where, for clocks. */
export type Now = { moment: string; zone: string }

const hourMs = 3_600_000
const momentForm = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/

/** Milliseconds of a moment, or null where it is not one: without an offset nobody knows when it was. */
export function momentMs(moment: string): number | null {
  const ms = momentForm.test(moment) ? Date.parse(moment) : Number.NaN
  return Number.isNaN(ms) ? null : ms
}

export const hoursBetweenMs = (fromMs: number, toMs: number) => (toMs - fromMs) / hourMs
export const addHoursMs = (ms: number, hours: number) => ms + hours * hourMs

/** The day a moment falls on in a time zone, "YYYY-MM-DD". */
export const dayIn = (zone: string, ms: number) => clockIn(zone, ms).slice(0, 10)

/** What the wall clock of a time zone shows at a moment. */
export function clockIn(zone: string, ms: number): string {
  const part = (type: Intl.DateTimeFormatPartTypes) =>
    parts.find((each) => each.type === type)?.value.padStart(2, "0") ?? ""
  const parts = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
  }).formatToParts(ms)
  return `${part("year")}-${part("month")}-${part("day")}T${part("hour")}:${part("minute")}`
}

/** A moment in words, as the wall clock of a time zone shows it: "Monday 30 March at 11:00". */
export function inWords(zone: string, ms: number): string {
  const day = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    weekday: "long",
    day: "numeric",
    month: "long",
  })
  return `${day.format(ms).replace(",", "")} at ${clockIn(zone, ms).slice(11)}`
}

/**
 * The moment at which a wall clock shows a time. Where clocks go back it shows some times twice: the later one is
 * meant, so that a test is never thought older than it is. A time that is skipped is read as if clocks had not moved.
 */
export function momentAt(zone: string, clock: string): string {
  const asUtcMs = Date.parse(`${clock}:00Z`)
  const offsetMs = (ms: number) => Date.parse(`${clockIn(zone, ms)}:00Z`) - ms
  const [before, after] = [asUtcMs - 24 * hourMs, asUtcMs + 24 * hourMs].map((ms) => asUtcMs - offsetMs(ms))
  const shown = [before, after].filter((ms) => clockIn(zone, ms) === clock)
  return new Date(shown.length > 0 ? Math.max(...shown) : before).toISOString()
}
