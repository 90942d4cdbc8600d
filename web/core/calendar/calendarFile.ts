import { dayAfter } from "../text/dayAfter"

/** A whole day of a calendar, "2026-03-09". The same `id` again takes the place of what was taken in before. */
export type CalendarDay = { id: string; day: string; title: string; text: string }

/**
 * Days as a file that calendars take in: iCalendar, RFC 5545. Each is a whole day wherever the client is, keeps no hour busy,
 * and is told so many hours before it begins.
 */
export function calendarFile(
  days: readonly CalendarDay[],
  { madeAt, remindHours }: { madeAt: Date; remindHours: number },
): string {
  const stamp = madeAt.toISOString().replace(/[-:]|\.\d+/g, "")
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Partline//Partline//EN",
    ...days.flatMap(({ id, day, title, text }) => [
      "BEGIN:VEVENT",
      `UID:${escaped(id)}`,
      `DTSTAMP:${stamp}`,
      `DTSTART;VALUE=DATE:${plainDay(day)}`,
      `DTEND;VALUE=DATE:${plainDay(dayAfter(day, 1))}`,
      `SUMMARY:${escaped(title)}`,
      `DESCRIPTION:${escaped(text)}`,
      "TRANSP:TRANSPARENT",
      "CLASS:PRIVATE",
      "BEGIN:VALARM",
      "ACTION:DISPLAY",
      `DESCRIPTION:${escaped(title)}`,
      `TRIGGER:-PT${remindHours}H`,
      "END:VALARM",
      "END:VEVENT",
    ]),
    "END:VCALENDAR",
  ]
  return lines.map((line) => `${folded(line)}\r\n`).join("")
}

const plainDay = (day: string) => day.replaceAll("-", "")

/** Text as a value: RFC 5545, 3.3.11. Other control letters may not stand in a file of this kind. */
const escaped = (text: string) =>
  text
    .replace(/[\\;,]/g, (letter) => `\\${letter}`)
    .replace(/\r\n|\r|\n/g, "\\n")
    .replace(/\p{Cc}/gu, " ")

/** So many octets a line at most, its end not counted: RFC 5545, 3.1. */
const mostOctets = 75
const octets = (text: string) => new TextEncoder().encode(text).length

/** A long line in pieces, each after the first behind a space, and no letter cut through. */
function folded(line: string): string {
  const pieces = [""]
  for (const letter of line) {
    if (octets(pieces[pieces.length - 1] + letter) > mostOctets) pieces.push(" ")
    pieces[pieces.length - 1] += letter
  }
  return pieces.join("\r\n")
}
