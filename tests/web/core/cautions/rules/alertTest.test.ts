import { describe, expect, test } from "vitest"
import { alertTestWanting } from "../../../../../web/core/cautions/rules/alertTest"
import type { AlertTest } from "../../../../../web/core/document/consultation"
import { momentAt } from "../../../../../web/core/text/zonedTime"
import { say } from "../../../../../web/words/say"
import { en } from "../../../../support/words"

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
  visit: null,
  changedSince: { said: "no", on: null },
  ...change,
})
const held = (clock: string, hennaOn: string | null = null) => ({
  now: { moment: at(clock), zone },
  visitDay: clock.slice(0, 10),
  hennaOn,
})
const wanting = (clock: string, ...tests: AlertTest[]) => {
  const fault = alertTestWanting(tests, "Toner", held(clock))
  return fault && say(en.cautions.testFaults, fault)
}

describe("hours alone clear nobody", () => {
  test("47 hours is held, with the hour it may be read", () => {
    expect(wanting("2026-06-03T09:00", made({ result: null }))).toBe(
      "Patch test with Toner: on for 47 of 48 hours. Read it from Wednesday 3 June, 10:00.",
    )
    expect(wanting("2026-06-03T09:59", made({ result: null }))).toMatch(/on for 47 of 48 hours/)
    expect(wanting("2026-06-03T09:00", made({ result: clear("2026-06-03T09:00") }))).not.toBeNull()
  })

  test("48 hours with the result read clear passes", () => {
    expect(wanting("2026-06-03T10:00", made())).toBeNull()
  })

  test("48 hours unread is held, and so are 480", () => {
    for (const clock of ["2026-06-03T10:00", "2026-06-21T10:00"])
      expect(wanting(clock, made({ result: null }))).toMatch(/not read yet\. Look at the skin/)
  })

  test("read before its hours had passed is held", () => {
    expect(wanting("2026-06-04T10:00", made({ result: clear("2026-06-03T09:59") }))).toMatch(
      /Look at the skin again/,
    )
  })
})

describe("clocks that change", () => {
  const overNight = made({ appliedAt: at("2026-03-28T10:00"), result: clear("2026-03-30T10:00") })

  test("forward: two days by the clock are 47 hours; at 11:00 it can be read", () => {
    expect(wanting("2026-03-30T10:00", overNight)).toMatch(
      /47 of 48 hours\. Read it from Monday 30 March, 11:00/,
    )
    expect(wanting("2026-03-30T11:00", { ...overNight, result: clear("2026-03-30T11:00") })).toBeNull()
  })

  test("back: 09:00 two days later is 48 hours", () => {
    const autumn = made({
      appliedAt: at("2026-10-24T10:00"),
      result: clear("2026-10-26T09:00"),
      validUntil: null,
      visit: "2026-10-26",
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
    [{ product: "Another toner" }, /^No patch test with Toner/],
    [{ appliedAt: at("2026-06-11T10:00") }, /date applied is in the future/],
    [{ appliedAt: "2026-06-01T10:00" }, /date and time applied are missing/],
    [
      { result: { outcome: "reacted", readBy: "J", readAt: at("2026-06-03T10:00") } },
      /reacted\. Do not colour/,
    ],
    [{ result: { outcome: "clear", readBy: " ", readAt: at("2026-06-03T10:00") } }, /by whom/],
    [{ result: clear("2026-06-12T10:00") }, /reading date is in the future/],
    [{ validUntil: "2026-06-09" }, /valid until 9 June 2026\. Apply a new one/],
    [{ changedSince: { said: "yes", on: null } }, /something has changed since/],
  ])("%#", (change, words) => {
    expect(wanting("2026-06-10T10:00", made(change))).toMatch(words)
  })

  test("it still counts on its last day, by the salon's own calendar", () => {
    const lastDay = made({ validUntil: "2026-06-10" })
    expect(wanting("2026-06-10T23:30", lastDay)).toBeNull()
    expect(wanting("2026-06-11T00:00", lastDay)).toMatch(/valid until/)
  })

  test("an older test that counts outdoes a newer one that does not; else the newest is named", () => {
    const fresh = made({ appliedAt: at("2026-06-10T09:00"), result: null })
    expect(wanting("2026-06-10T10:00", made(), fresh)).toBeNull()
    expect(wanting("2026-06-10T10:00", made({ result: null }), fresh)).toMatch(/for 1 of 48/)
  })
})

describe("a test counts for the visit it was made for", () => {
  const forVisit = made({ validUntil: null, visit: "2026-06-03" })

  test("and for no other: one read years ago clears nobody today", () => {
    expect(wanting("2026-06-03T10:00", forVisit)).toBeNull()
    expect(wanting("2026-06-10T10:00", forVisit)).toMatch(/made for the visit of 3 June 2026/)
    expect(wanting("2029-06-03T10:00", forVisit)).toMatch(/made for the visit of 3 June 2026/)
    expect(wanting("2026-06-03T10:00", { ...forVisit, visit: null })).toMatch(/made for another visit/)
  })

  test("and not when it was applied and read long before, although entered as made for this visit", () => {
    const today = "2026-06-10T10:00"
    const old = {
      ...forVisit,
      appliedAt: at("2019-06-01T10:00"),
      result: clear("2019-06-03T10:00"),
      visit: "2026-06-10",
    }
    expect(wanting(today, old)).toBe(
      "Patch test with Toner: applied on 1 June 2019, more than 14 days before the visit. Apply a new one, or enter how long its maker lets it count.",
    )
    expect(wanting(today, { ...old, validUntil: "2026-06-30" })).toBeNull()
    const appliedOn = (day: string) => ({ ...old, appliedAt: at(`${day}T10:00`), result: clear(today) })
    expect(wanting(today, appliedOn("2026-05-26"))).toMatch(/more than 14 days/)
    expect(wanting(today, appliedOn("2026-05-27"))).toBeNull()
  })

  test("longer where its maker’s sheet says so, and never past that day", () => {
    expect(wanting("2026-06-10T10:00", { ...forVisit, validUntil: "2026-06-30" })).toBeNull()
    expect(wanting("2026-07-01T10:00", { ...forVisit, validUntil: "2026-06-30" })).toMatch(/valid until/)
  })
})

describe("a black henna tattoo", () => {
  const fault = (hennaOn: string | null) =>
    alertTestWanting([made()], "Toner", held("2026-06-10T10:00", hennaOn))?.code ?? null

  test("made after the test, or on its day, or nobody knows when: the test does not count", () => {
    expect(["2026-06-05", "2026-06-01", "unknown"].map(fault)).toEqual([
      "before-henna",
      "before-henna",
      "henna-undated",
    ])
  })

  test("made before it, or never: it counts", () => {
    expect(["2026-05-31", null].map(fault)).toEqual([null, null])
  })
})
