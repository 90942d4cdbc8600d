import { daysOf } from "../../cautions/asking/questions"
import { type Answer, newConsultation, type Question, type Scalp } from "../../document/consultation"
import type { Edit } from "../../document/edit"
import type { Now } from "../../text/zonedTime"
import { recordConsultation } from "./setConsultation"

/** Answers questions today, for the visit of the plan. An answer given before is confirmed by the same answer. */
export const answerQuestions =
  (names: readonly Question[], said: Answer["said"], now: Now): Edit =>
  (plan) => {
    const { today, visit } = daysOf(plan, now)
    const answer: Answer = { said, on: today, visit }
    const answers = {
      ...plan.consultation?.answers,
      ...Object.fromEntries(names.map((name) => [name, answer])),
    }
    return recordConsultation({ answers }, now)(plan)
  }

/** Confirms answers given for another visit as they stand. */
export const confirmAnswers =
  (names: readonly Question[], now: Now): Edit =>
  (plan) => {
    const { today, visit } = daysOf(plan, now)
    const before = plan.consultation?.answers ?? {}
    const confirmed = names.flatMap((name) => {
      const answer = before[name]
      return answer ? [[name, { ...answer, on: today, visit }] as const] : []
    })
    return recordConsultation({ answers: { ...before, ...Object.fromEntries(confirmed) } }, now)(plan)
  }

/** Leaves a question open again. */
export const clearAnswer =
  (name: Question, now: Now): Edit =>
  (plan) => {
    const { [name]: _, ...answers } = plan.consultation?.answers ?? {}
    return recordConsultation({ answers }, now)(plan)
  }

/** What is seen of the scalp today. */
export const lookAtScalp =
  (seen: Scalp, now: Now): Edit =>
  (plan) =>
    recordConsultation({ scalp: { seen, on: daysOf(plan, now).today } }, now)(plan)

/** No to questions that were asked aloud, signed with a name. */
export const answerAloud =
  (questions: readonly Question[], by: string, now: Now): Edit =>
  (plan) => {
    const { askedBy, signatures } = plan.consultation ?? newConsultation()
    const signed = {
      ...plan,
      consultation: {
        ...newConsultation(),
        ...plan.consultation,
        askedBy: askedBy.trim() === "" ? by : askedBy,
        signatures: [...signatures, { by, at: now.moment, questions }],
      },
    }
    return answerQuestions(questions, "no", now)(signed)
  }
