import { remindHoursBefore } from "../../../presets/sheets/calendar"
import { calendarFile } from "../../core/calendar/calendarFile"
import type { DayToCome } from "../../core/calendar/daysToCome"
import { fileStem } from "../../core/file/fileName"
import { saveFile } from "../saveFile"
import { words } from "../words"

/** Whose days they are: what tells them from those of others, and the letters that stand in the calendar. */
type Whose = { id: string; initials: string }

/** Hands out days to come as a file for a calendar. It tells initials and days, nothing of health and nothing of hair. */
export function saveCalendar(days: readonly DayToCome[], { id, initials }: Whose): Promise<boolean> {
  const w = words().cards.calendar
  const entries = days.map((day) => ({
    id: `${id}-${day.what}${day.isTest ? "-test" : ""}`,
    day: day.day,
    title: w.title(day, initials),
    text: w.text(day),
  }))
  const file = calendarFile(entries, { madeAt: new Date(), remindHours: remindHoursBefore })
  return saveFile(file, `${fileStem(initials, "client")}-${w.fileName}.ics`, "text/calendar")
}
