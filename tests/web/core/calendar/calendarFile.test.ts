import ICAL from "ical.js"
import { describe, expect, it } from "vitest"
import { calendarFile } from "../../../../web/core/calendar/calendarFile"
import { afterService, ofCard } from "../../../../web/core/calendar/daysToCome"
import { makeDice } from "../../../support/dice"

const madeAt = new Date("2026-03-09T16:05:07.123Z")
const made = (days: Parameters<typeof calendarFile>[0]) => calendarFile(days, { madeAt, remindHours: 15 })
const due = { id: "plan-1-frame", day: "2026-05-04", title: "Face frame due: A.B.", text: "Between A and B." }

/** Read back by ical.js, a reader of iCalendar that this project has no part in. */
const readBack = (file: string) =>
  new ICAL.Component(ICAL.parse(file)).getAllSubcomponents("vevent").map((part) => {
    const event = new ICAL.Event(part)
    const [alarm] = part.getAllSubcomponents("valarm")
    return {
      id: event.uid,
      day: event.startDate.toString(),
      isWholeDay: event.startDate.isDate,
      end: event.endDate.toString(),
      title: event.summary,
      text: event.description,
      hoursBefore: -(alarm.getFirstPropertyValue("trigger") as ICAL.Duration).toSeconds() / 3600,
    }
  })

describe("a file for a calendar", () => {
  it("is what RFC 5545 writes for a day with a reminder", () => {
    expect(made([due]).split("\r\n")).toEqual([
      "BEGIN:VCALENDAR",
      "VERSION:2.0",
      "PRODID:-//Partline//Partline//EN",
      "BEGIN:VEVENT",
      "UID:plan-1-frame",
      "DTSTAMP:20260309T160507Z",
      "DTSTART;VALUE=DATE:20260504",
      "DTEND;VALUE=DATE:20260505",
      "SUMMARY:Face frame due: A.B.",
      "DESCRIPTION:Between A and B.",
      "TRANSP:TRANSPARENT",
      "CLASS:PRIVATE",
      "BEGIN:VALARM",
      "ACTION:DISPLAY",
      "DESCRIPTION:Face frame due: A.B.",
      "TRIGGER:-PT15H",
      "END:VALARM",
      "END:VEVENT",
      "END:VCALENDAR",
      "",
    ])
  })

  it("says the same to a reader of its own, over the end of a month and a year", () => {
    for (const [day, end] of [
      ["2026-02-28", "2026-03-01"],
      ["2028-02-29", "2028-03-01"],
      ["2026-12-31", "2027-01-01"],
    ])
      expect(readBack(made([{ ...due, day }]))).toEqual([
        { ...due, day, isWholeDay: true, end, hoursBefore: 15 },
      ])
  })

  // RFC 5545: lines of at most 75 octets (3.1), commas, semicolons, backslashes and ends of lines escaped (3.3.11).
  it("gives back any text, letter by letter, in lines of at most 75 octets", () => {
    const { even } = makeDice(5545)
    const letters = [..."aé漢👩🏽‍🦰,;\\n:\"'=  \n"]
    for (let round = 0; round < 200; round++) {
      const text = Array.from({ length: 1 + Math.floor(even() * 200) }, () => {
        return letters[Math.floor(even() * letters.length)]
      }).join("")
      const file = made([{ ...due, title: text, text: `x${text}` }])
      for (const line of file.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
      expect(file).not.toContain("�")
      const [back] = readBack(file)
      expect([back.title, back.text]).toEqual([text, `x${text}`])
    }
  })

  it("lets no end of a line into a value, and no other control letter at all", () => {
    const [back] = readBack(made([{ ...due, title: "A\r\nEND:VEVENT\rB\u0007C" }]))
    expect(back.title).toBe("A\nEND:VEVENT\nB C")
  })
})

// By hand, on the calendar of 2026: each test is on the skin 48 h before its visit (as in returnDates).
describe("days to come", () => {
  const frame = { from: "2026-05-04", to: "2026-06-01" }
  it("after a service are toner and frame, each with a test of its own", () => {
    expect(afterService({ toner: { from: "2026-04-06", to: "2026-04-20" }, frame })).toEqual([
      { what: "toner", isTest: true, day: "2026-04-04", until: null },
      { what: "toner", isTest: false, day: "2026-04-06", until: "2026-04-20" },
      { what: "frame", isTest: true, day: "2026-05-02", until: null },
      { what: "frame", isTest: false, day: "2026-05-04", until: "2026-06-01" },
    ])
    expect(afterService({ toner: null, frame })).toHaveLength(2)
  })
  it("of a card are its visit and the test, while there is still time for one", () => {
    const visit = { planned: true, day: "2026-04-10" } as const
    const test = { what: "visit", isTest: true, day: "2026-04-08", until: null }
    expect(ofCard(visit, "2026-04-08")[0]).toEqual(test)
    expect(ofCard(visit, "2026-04-09")).toEqual([{ ...test, isTest: false, day: "2026-04-10" }])
  })
  it("of a card without a plan are those on which the frame is due: from today on where they have begun, none when past", () => {
    const later = { planned: false, ...frame } as const
    expect(ofCard(later, "2026-04-01").map(({ day }) => day)).toEqual(["2026-05-02", "2026-05-04"])
    expect(ofCard(later, "2026-05-20")).toEqual([
      { what: "frame", isTest: false, day: "2026-05-20", until: "2026-06-01" },
    ])
    expect(ofCard(later, "2026-06-02")).toEqual([])
  })
})
