import type { Question, StrandPart } from "../../../core/document/consultation"
import type { CautionsWords } from "../../en/cautions/cautions"
import type { Tools } from "../../tools"

type Parts = { parts: readonly StrandPart[] | null }
type Places = Readonly<Record<StrandPart, string>>

/** Hair of which something was not recorded: all of it, or some parts of the strand. */
const hair =
  (t: Tools, places: Places, words: string) =>
  ({ parts }: Parts) =>
    parts === null ? words : `${words}: ${t.and(parts.map((part) => places[part]))}`

/** What is not known and hurts nobody. */
export const notKnownWords = (t: Tools, places: Places): CautionsWords["notKnown"] => ({
  "target-level": "Цільовий рівень",
  finish: "Кінцевий тон",
  brightest: "Де найсвітліше",
  "root-distance": "Відстань від кореня",
  grey: "Скільки сивини",
  upkeep: "Як часто клієнт приходитиме",
  level: hair(t, places, "Рівень зараз"),
  porosity: hair(t, places, "Пористість"),
})

type Shared = { strandParts: Places; questions: Readonly<Record<Question, string>> }

/** What can hurt and was not asked for this visit; an older answer has to be confirmed. */
export const notAskedWords = (t: Tools, { strandParts, questions }: Shared): CautionsWords["notAsked"] => ({
  age: "Вік",
  scalp: ({ before }) =>
    before === null ? "Шкіра голови: оглянути сьогодні" : `Шкіра голови: останній огляд ${t.date(before)}`,
  question: ({ question, before, isOld }) => {
    if (!isOld) return questions[question]
    return before === null
      ? `${questions[question]} (відповідь іншого дня: підтвердити)`
      : `${questions[question]} (відповідь від ${t.date(before)}: підтвердити)`
  },
  "which-allergy": "На що алергія, відколи і як проявилася?",
  "black-henna-date": "Коли було татуювання чорною хною?",
  "changed-since": ({ product }) => `Шкірний тест із «${product}»: чи щось відтоді змінилося?`,
  history: hair(t, strandParts, "Історія волосся"),
  stretch: hair(t, strandParts, "Еластичність мокрого волосся"),
})
