import { afterEach, beforeEach, expect, it, vi } from "vitest"
import { examplePlan } from "../../../web/core/file/examplePlan"
import { dayIn } from "../../../web/core/text/zonedTime"
import { nowHere } from "../../../web/session/nowHere"
import { optionsOf, renewed } from "../../../web/sheets/optionsOf"
import { askedAll } from "../../support/answers"
import { en } from "../../support/words"

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

const minutes = 60_000
/** A minute before the midnight of this clock. */
const lateMs = new Date(2026, 2, 9, 23, 59).getTime()

function clearedTonight() {
  vi.setSystemTime(lateMs)
  const { toning: _, ...plan } = examplePlan()
  const today = dayIn(nowHere().zone, lateMs)
  return { ...plan, date: today, consultation: askedAll(today) }
}
const chosen = { paper: "a4", mirror: false, language: "en-GB", words: en } as const

it("keeps the options of a sheet while what they say of the hour is true", () => {
  const plan = clearedTonight()
  const shown = optionsOf(plan, chosen)
  expect(shown.alert).toBe("")
  vi.setSystemTime(lateMs + 0.5 * minutes)
  expect(renewed(shown, plan)).toBe(shown)
})

it("says after midnight that what was asked the day before has not been asked", () => {
  const plan = clearedTonight()
  const shown = optionsOf(plan, chosen)
  vi.setSystemTime(lateMs + 2 * minutes)
  const now = renewed(shown, plan)
  expect(now.alert).toBe(en.sheets.map.alerts.notAsked)
  expect(now.stops).not.toBe(shown.stops)
  expect(now).toEqual(optionsOf(plan, chosen))
})
