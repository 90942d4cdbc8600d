import { describe, expect, test } from "vitest"
import { alertTestWanting } from "../../../../../web/core/cautions/rules/alertTest"
import type { AlertTest } from "../../../../../web/core/document/consultation"
import { momentAt } from "../../../../../web/core/text/zonedTime"

// At least 48 hours before any oxidative colour: National Hair and Beauty Federation (UK); two days, every time: FDA,
// Hair dyes. The hours of London's clock changes: 29 March and 25 October 2026, by the law of the last Sunday.
const zone = "Europe/London"
const at = (clock: string) => momentAt(zone, clock)
const clear = (readAt: string): AlertTest["result"] => ({ outcome: "clear", readBy: "J", readAt: at(readAt) })
const made = (change: Partial<AlertTest> = {}): AlertTest => ({
  product: "Toner",
  place: "behind the left ear",
  appliedAt: at("2026-06-01T10:00"),
  result: clear("2026-06-03T10:00"),
  validUntil: "2026-07-01",
  changedSince: "no",
  ...change,
})
const wanting = (clock: string, ...tests: AlertTest[]) =>
  alertTestWanting(tests, "Toner", { moment: at(clock), zone })

describe("hours alone clear nobody", () => {
  test("47 hours is held, with the hour it may be read", () => {
    expect(wanting("2026-06-03T09:00", made({ result: null }))).toBe(
      "The alert test with Toner has been on for 47 of 48 hours; read it from Wednesday 3 June at 10:00.",
    )
    expect(wanting("2026-06-03T09:59", made({ result: null }))).toMatch(/for 47 of 48 hours/)
    expect(wanting("2026-06-03T09:00", made({ result: clear("2026-06-03T09:00") }))).not.toBeNull()
  })

  test("48 hours with the result read clear passes", () => {
    expect(wanting("2026-06-03T10:00", made())).toBeNull()
  })

  test("48 hours unread is held, and so are 480", () => {
    for (const clock of ["2026-06-03T10:00", "2026-06-21T10:00"])
      expect(wanting(clock, made({ result: null }))).toMatch(/has not been read; look at the skin/)
  })

  test("read before its hours had passed is held", () => {
    expect(wanting("2026-06-04T10:00", made({ result: clear("2026-06-03T09:59") }))).toMatch(
      /look at the skin again/,
    )
  })
})

describe("clocks that change", () => {
  const overNight = made({ appliedAt: at("2026-03-28T10:00"), result: clear("2026-03-30T10:00") })

  test("forward: two days by the clock are 47 hours; at 11:00 it can be read", () => {
    expect(wanting("2026-03-30T10:00", overNight)).toMatch(
      /47 of 48 hours; read it from Monday 30 March at 11:00/,
    )
    expect(wanting("2026-03-30T11:00", { ...overNight, result: clear("2026-03-30T11:00") })).toBeNull()
  })

  test("back: 09:00 two days later is 48 hours", () => {
    const autumn = made({
      appliedAt: at("2026-10-24T10:00"),
      result: clear("2026-10-26T09:00"),
      validUntil: null,
    })
    expect(wanting("2026-10-26T08:59", autumn)).not.toBeNull()
    expect(wanting("2026-10-26T09:00", autumn)).toBeNull()
  })

  test("put on in one zone and read in another is the same 48 hours", () => {
    const abroad = made({
      appliedAt: "2026-06-01T18:00:00+09:00",
      result: { outcome: "clear", readBy: "J", readAt: "2026-06-03T09:00:00Z" },
    })
    expect(wanting("2026-06-03T10:00", abroad)).toBeNull()
    expect(wanting("2026-06-03T09:59", abroad)).not.toBeNull()
  })
})

describe("what else does not count", () => {
  test.each<[Partial<AlertTest>, RegExp]>([
    [{ product: "Another toner" }, /^No alert test with Toner/],
    [{ appliedAt: at("2026-06-11T10:00") }, /dated in the future; check the day/],
    [{ appliedAt: "2026-06-01T10:00" }, /no time it was put on/],
    [
      { result: { outcome: "reacted", readBy: "J", readAt: at("2026-06-03T10:00") } },
      /reacted; do not colour/,
    ],
    [{ result: { outcome: "clear", readBy: " ", readAt: at("2026-06-03T10:00") } }, /by whom/],
    [{ result: clear("2026-06-12T10:00") }, /read in the future/],
    [{ validUntil: "2026-06-09" }, /counted until 2026-06-09; put on a new one/],
    [{ changedSince: "yes" }, /Something has changed since the alert test/],
  ])("%#", (change, words) => {
    expect(wanting("2026-06-10T10:00", made(change))).toMatch(words)
  })

  test("it still counts on its last day, by the salon's own calendar", () => {
    const lastDay = made({ validUntil: "2026-06-10" })
    expect(wanting("2026-06-10T23:30", lastDay)).toBeNull()
    expect(wanting("2026-06-11T00:00", lastDay)).toMatch(/counted until/)
  })

  test("an older test that counts outdoes a newer one that does not; else the newest is named", () => {
    const fresh = made({ appliedAt: at("2026-06-10T09:00"), result: null })
    expect(wanting("2026-06-10T10:00", made(), fresh)).toBeNull()
    expect(wanting("2026-06-10T10:00", made({ result: null }), fresh)).toMatch(/for 1 of 48/)
  })
})
