import { visitLimits } from "../../../../presets/timing/visitLimits"
import type { AlertTest } from "../../document/consultation"
import { addHoursMs, dayIn, hoursBetweenMs, inWords, momentMs } from "../../text/zonedTime"

/** When it is and where, for clocks. */
export type Now = { moment: string; zone: string }

/** Why no alert test lets a product be used today, in one sentence; null when one was read clear and still counts. */
export function alertTestWanting(tests: readonly AlertTest[], product: string, now: Now): string | null {
  const own = tests.filter((test) => test.product === product)
  const wanting = own.map((test) => whyNotCounting(test, now))
  if (wanting.includes(null)) return null
  const putOnMs = own.map(({ appliedAt }) => momentMs(appliedAt) ?? 0)
  return (
    wanting[putOnMs.indexOf(Math.max(...putOnMs))] ??
    `No alert test with ${product} is written down; put one on and read it after ${hoursText}.`
  )
}

/** Never rounded up: 47 hours and 59 minutes are 47. */
const wholeHours = (fromMs: number, toMs: number) => Math.floor(hoursBetweenMs(fromMs, toMs))
const hoursText = `${visitLimits.alertTestHours} hours`

/** Hours alone clear nobody: the test must have stayed its hours, been read after them, and been read clear. */
export function whyNotCounting(test: AlertTest, now: Now): string | null {
  const nowMs = momentMs(now.moment)
  if (nowMs === null) throw new Error(`now is no moment: ${now.moment}`)
  const appliedMs = momentMs(test.appliedAt)
  const named = `The alert test with ${test.product}`
  if (appliedMs === null) return `${named} has no time it was put on; write down the day and the time.`
  if (appliedMs > nowMs) return `${named} is dated in the future; check the day it was put on.`
  const dueMs = addHoursMs(appliedMs, visitLimits.alertTestHours)
  if (nowMs < dueMs)
    return `${named} has been on for ${wholeHours(appliedMs, nowMs)} of ${hoursText}; read it from ${inWords(now.zone, dueMs)}.`
  return (
    whyReadingNotCounting(test, named, { nowMs, dueMs }) ?? whyOutOfDate(test, named, dayIn(now.zone, nowMs))
  )
}

function whyReadingNotCounting(
  { result }: AlertTest,
  named: string,
  { nowMs, dueMs }: { nowMs: number; dueMs: number },
) {
  if (result === null) return `${named} has not been read; look at the skin and write down what is seen.`
  if (result.outcome === "reacted") return `${named} reacted; do not colour.`
  const readMs = momentMs(result.readAt)
  if (readMs === null || !result.readBy.trim())
    return `${named} does not say when it was read and by whom; write it down.`
  if (readMs > nowMs) return `${named} was read in the future; check the day it was read.`
  return readMs < dueMs
    ? `${named} was read before its ${hoursText} had passed; look at the skin again.`
    : null
}

function whyOutOfDate({ validUntil, changedSince }: AlertTest, named: string, today: string) {
  if (validUntil !== null && validUntil < today)
    return `${named} counted until ${validUntil}; put on a new one.`
  return changedSince === "yes"
    ? `Something has changed since ${named.replace("The", "the")}; put on a new one.`
    : null
}
