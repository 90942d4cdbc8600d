import { visitLimits } from "../../../../presets/timing/visitLimits"
import type { AlertTest } from "../../document/consultation"
import { dayAfter } from "../../text/dayAfter"
import { addHoursMs, clockIn, dayIn, hoursBetweenMs, momentMs, type Now } from "../../text/zonedTime"

/** Why an alert test does not let a product be used today. Clocks are of the wall here, "YYYY-MM-DDTHH:MM". */
export type AlertTestFault = { product: string } & (
  | { code: "no-test"; hours: number }
  | { code: "no-time" }
  | { code: "in-future" }
  | { code: "too-young"; hoursOn: number; hours: number; readFrom: string }
  | { code: "unread" }
  | { code: "reacted" }
  | { code: "reader-missing" }
  | { code: "read-in-future" }
  | { code: "read-early"; hours: number }
  | { code: "out-of-date"; lastDay: string }
  /** Applied so many days before the visit, and nothing says that its maker lets it count so long. */
  | { code: "too-old"; appliedOn: string; mostDays: number }
  | { code: "changed-since" }
  | { code: "other-visit"; madeFor: string | null }
  | { code: "before-henna"; tattooOn: string }
  | { code: "henna-undated" }
)

/**
 * When a test is held against: now, the day of the visit, and the day of the latest black henna tattoo ("unknown" where
 * there was one and nobody said when; null where there was none).
 */
export type TestMoment = { now: Now; visitDay: string; hennaOn: string | null }

const { alertTestHours: hours, alertTestMostDays: mostDays } = visitLimits

/** Why no alert test lets a product be used today; null when one was read clear and still counts. */
export function alertTestWanting(
  tests: readonly AlertTest[],
  product: string,
  at: TestMoment,
): AlertTestFault | null {
  const own = tests.filter((test) => test.product === product)
  const wanting = own.map((test) => whyNotCounting(test, at))
  if (wanting.includes(null)) return null
  const putOnMs = own.map(({ appliedAt }) => momentMs(appliedAt) ?? 0)
  return wanting[putOnMs.indexOf(Math.max(...putOnMs))] ?? { code: "no-test", product, hours }
}

/** Never rounded up: 47 hours and 59 minutes are 47. */
const wholeHours = (fromMs: number, toMs: number) => Math.floor(hoursBetweenMs(fromMs, toMs))

/** Hours alone clear nobody: the test must have stayed its hours, been read after them, and been read clear. */
export function whyNotCounting(test: AlertTest, at: TestMoment): AlertTestFault | null {
  const { now } = at
  const nowMs = momentMs(now.moment)
  if (nowMs === null) throw new Error(`now is no moment: ${now.moment}`)
  const { product } = test
  const appliedMs = momentMs(test.appliedAt)
  if (appliedMs === null) return { code: "no-time", product }
  if (appliedMs > nowMs) return { code: "in-future", product }
  const dueMs = addHoursMs(appliedMs, hours)
  if (nowMs < dueMs) {
    const hoursOn = wholeHours(appliedMs, nowMs)
    return { code: "too-young", product, hoursOn, hours, readFrom: clockIn(now.zone, dueMs) }
  }
  return whyReadingNotCounting(test, { nowMs, dueMs }) ?? whyOutOfDate(test, dayIn(now.zone, nowMs), at)
}

function whyReadingNotCounting(
  { product, result }: AlertTest,
  { nowMs, dueMs }: { nowMs: number; dueMs: number },
): AlertTestFault | null {
  if (result === null) return { code: "unread", product }
  if (result.outcome === "reacted") return { code: "reacted", product }
  const readMs = momentMs(result.readAt)
  if (readMs === null || !result.readBy.trim()) return { code: "reader-missing", product }
  if (readMs > nowMs) return { code: "read-in-future", product }
  return readMs < dueMs ? { code: "read-early", product, hours } : null
}

/** A test counts for the visit it was made for, shortly before it; longer only where the maker's sheet says so, and never past that day. */
function whyOutOfDate(
  { product, appliedAt, validUntil, visit, changedSince }: AlertTest,
  today: string,
  { now, visitDay, hennaOn }: TestMoment,
): AlertTestFault | null {
  if (validUntil !== null && validUntil < today) return { code: "out-of-date", product, lastDay: validUntil }
  if (validUntil === null && visit !== visitDay) return { code: "other-visit", product, madeFor: visit }
  const appliedOn = dayIn(now.zone, momentMs(appliedAt) ?? 0)
  if (validUntil === null && appliedOn < dayAfter(visitDay, -mostDays))
    return { code: "too-old", product, appliedOn, mostDays }
  if (hennaOn === "unknown") return { code: "henna-undated", product }
  if (hennaOn !== null && appliedOn <= hennaOn) return { code: "before-henna", product, tattooOn: hennaOn }
  return changedSince?.said === "yes" ? { code: "changed-since", product } : null
}
