import type { Answer, Consultation, Question } from "../../document/consultation"
import type { Plan } from "../../document/schema"
import { dayAfter } from "../../text/dayAfter"
import type { Now } from "../../text/zonedTime"
import { dayIn, momentMs } from "../../text/zonedTime"

/**
 * How long an answer counts: on its day alone, or for the visit it was confirmed for. What is asked alone is never
 * answered together with others: breathing, of the client and of who mixes, hives, a rash, an allergy, pregnancy.
 */
export type QuestionRow = { lasts: "day" | "visit"; alone: boolean }

export const questionRows: Readonly<Record<Question, QuestionRow>> = {
  breathingReaction: { lasts: "visit", alone: true },
  dyeAllergy: { lasts: "visit", alone: true },
  otherAllergy: { lasts: "visit", alone: true },
  faceRash: { lasts: "day", alone: true },
  expecting: { lasts: "day", alone: true },
  pastReaction: { lasts: "visit", alone: false },
  asthma: { lasts: "visit", alone: true },
  scalpToday: { lasts: "day", alone: false },
  scalpCondition: { lasts: "visit", alone: false },
  medicines: { lasts: "visit", alone: false },
  chemotherapy: { lasts: "visit", alone: false },
  blackHennaTattoo: { lasts: "visit", alone: false },
  blackHennaReaction: { lasts: "visit", alone: false },
  recentRelaxer: { lasts: "visit", alone: false },
  homeColour: { lasts: "visit", alone: false },
  extensions: { lasts: "visit", alone: false },
  hairlineLoss: { lasts: "visit", alone: false },
  lenses: { lasts: "day", alone: false },
  browsOrLashes: { lasts: "visit", alone: false },
  colouristBreathing: { lasts: "visit", alone: true },
}

/**
 * The day by the wall calendar, and the day of the visit that answers are for. `begun`: the day before, on
 * which a service began that goes on over midnight.
 */
export type Days = { today: string; visit: string; begun?: string | undefined }

/**
 * A visit cannot lie in the past: once its day is over, what is mixed is mixed for another one, today. Only a service
 * that began the evening before is still of that visit.
 */
export function daysOf({ date }: Pick<Plan, "date">, now: Now, begunAt: string | null = null): Days {
  const ms = momentMs(now.moment)
  if (ms === null) throw new Error(`now is no moment: ${now.moment}`)
  const today = dayIn(now.zone, ms)
  const begunMs = begunAt === null ? null : momentMs(begunAt)
  const begun = begunMs === null ? today : dayIn(now.zone, begunMs)
  return { today, visit: date > today ? date : today, ...(dayAfter(begun, 1) === today && { begun }) }
}

/** Whether what was seen or said that day is of today's visit. */
export const isOfToday = (day: string | null | undefined, { today, begun }: Days) =>
  day === today || (day === begun && begun !== undefined)

/** Whether what was said for the visit of that day is of this one. */
export const isOfVisit = (day: string | null, days: Days) =>
  day === days.visit || (days.visit === days.today && isOfToday(day, days))

/** Whether an answer counts still. A yes that stops holds beyond that, until it is answered anew. */
export const isCurrent = (question: Question, answer: Answer | undefined, days: Days) =>
  answer !== undefined &&
  (questionRows[question].lasts === "day" ? isOfToday(answer.on, days) : isOfVisit(answer.visit, days))

/** What the black henna did is only asked of someone who had it. */
export const isAsked = (question: Question, { answers }: Consultation) =>
  question !== "blackHennaReaction" || answers.blackHennaTattoo?.said === "yes"
