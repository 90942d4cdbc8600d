import { describe, expect, test } from "vitest"
import {
  clockIn,
  dayIn,
  hoursBetweenMs,
  inWords,
  momentAt,
  momentMs,
} from "../../../../web/core/text/zonedTime"

const ms = (moment: string) => momentMs(moment) ?? Number.NaN
const hours = (zone: string, from: string, to: string) =>
  hoursBetweenMs(ms(momentAt(zone, from)), ms(momentAt(zone, to)))

describe("moments", () => {
  test("need their offset", () => {
    expect(momentMs("2026-03-28T10:00:00Z")).toBe(Date.UTC(2026, 2, 28, 10))
    expect(momentMs("2026-03-28T10:00+05:30")).toBe(Date.UTC(2026, 2, 28, 4, 30))
    for (const text of ["2026-03-28T10:00", "28.3.2026 10:00", "2026-13-40T10:00Z", ""])
      expect(momentMs(text)).toBeNull()
  })

  test("clock there and back, east and west", () => {
    expect(momentAt("Asia/Kolkata", "2026-03-28T10:00")).toBe("2026-03-28T04:30:00.000Z")
    expect(momentAt("America/New_York", "2026-01-15T23:30")).toBe("2026-01-16T04:30:00.000Z")
    expect(clockIn("Pacific/Auckland", Date.UTC(2026, 0, 1, 0, 5))).toBe("2026-01-01T13:05")
    expect(dayIn("America/New_York", Date.UTC(2026, 0, 16, 4, 30))).toBe("2026-01-15")
    expect(inWords("Europe/London", Date.UTC(2026, 2, 30, 10))).toBe("Monday 30 March at 11:00")
  })

  test("midnight is 00:00", () => {
    expect(clockIn("Europe/London", Date.UTC(2026, 0, 10))).toBe("2026-01-10T00:00")
  })
})

// Clocks of 2026: Europe forward 29 March, back 25 October; New York 8 March and 1 November; Lord Howe by half an
// hour, back 5 April; Tokyo never (IANA time zone database).
describe("from 10:00 to 10:00 two days later", () => {
  test.each([
    ["Europe/London", "2026-03-28", "2026-03-30", 47],
    ["Europe/London", "2026-10-24", "2026-10-26", 49],
    ["America/New_York", "2026-03-07", "2026-03-09", 47],
    ["America/New_York", "2026-10-31", "2026-11-02", 49],
    ["Australia/Lord_Howe", "2026-04-04", "2026-04-06", 48.5],
    ["Asia/Tokyo", "2026-03-28", "2026-03-30", 48],
  ])("%s %s to %s is %d hours", (zone, from, to, expected) => {
    expect(hours(zone, `${from}T10:00`, `${to}T10:00`)).toBe(expected)
  })
})

describe("the hour of the change", () => {
  test("a time shown twice is the later one", () => {
    expect(momentAt("Europe/London", "2026-10-25T01:30")).toBe("2026-10-25T01:30:00.000Z")
    expect(momentAt("America/New_York", "2026-11-01T01:30")).toBe("2026-11-01T06:30:00.000Z")
  })

  test("a time that is skipped is read as if the clocks had not moved", () => {
    expect(momentAt("Europe/London", "2026-03-29T01:30")).toBe("2026-03-29T01:30:00.000Z")
  })
})
