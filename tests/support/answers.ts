import {
  type Answer,
  type Consultation,
  newConsultation,
  type Question,
  questionNames,
} from "../../web/core/document/consultation"

/** An answer given on a day, for the visit of that day. */
export const answered = (said: Answer["said"], day: string): Answer => ({ said, on: day, visit: day })

/** Answers of a day. */
export const answersOn = (day: string, said: Partial<Record<Question, Answer["said"]>>) =>
  Object.fromEntries(
    Object.entries(said).map(([name, each]) => [name, answered(each, day)]),
  ) as Consultation["answers"]

/** A consultation of a day in which all that can hurt was asked, and nothing was found. */
export const askedAll = (day: string, change: Partial<Consultation> = {}): Consultation => ({
  ...newConsultation(),
  askedBy: "M.",
  ageYears: 34,
  scalp: { seen: "calm", on: day },
  hair: {
    top: Object.fromEntries(
      (["roots", "midLengths", "ends"] as const).map((part) => [
        part,
        { level: 7, history: [], porosity: "usual", stretch: "springs-back" },
      ]),
    ),
  },
  ...change,
  answers: {
    ...answersOn(day, Object.fromEntries(questionNames.map((name) => [name, "no"]))),
    ...change.answers,
  },
})
