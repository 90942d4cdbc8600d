import type { Due } from "../cards/cardList"
import { type Returns, testDayFor } from "../record/returnDates"

/** What a client comes for: a visit that is planned, or toner or frame that are due. */
export type ComesFor = "visit" | "toner" | "frame"

/** A day to keep in mind, "2026-03-09", for the visit or for the test before it, and the last that does as well where there are more. */
export type DayToCome = { what: ComesFor; isTest: boolean; day: string; until: string | null }

/** The days that follow from a service: each visit asks for a test of its own. */
export const afterService = ({ toner, frame }: Pick<Returns, "toner" | "frame">): DayToCome[] => [
  ...(toner ? withTest("toner", toner.from, toner.to) : []),
  ...withTest("frame", frame.from, frame.to),
]

/** The days of a card from today on. A test that could not be on the skin for long enough any more is not among them. */
export const ofCard = (due: Due, today: string): DayToCome[] =>
  (due.planned
    ? withTest("visit", due.day, null)
    : withTest("frame", laterOf(due.from, today), due.to)
  ).filter(({ day, until }) => (until ?? day) >= today)

const laterOf = (a: string, b: string) => (a > b ? a : b)

/** A visit with the last day on which its test may be put on the skin. */
const withTest = (what: ComesFor, day: string, until: string | null): DayToCome[] => [
  { what, isTest: true, day: testDayFor(day), until: null },
  { what, isTest: false, day, until },
]
