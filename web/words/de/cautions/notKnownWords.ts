import type { StrandPart } from "../../../core/document/consultation"
import type { notKnownWords as english, notAskedWords as englishAsked } from "../../en/cautions/notKnownWords"
import type { Tools } from "../../tools"

/** Hair of which something was not recorded: all of it, or some parts of the strand. */
const hair =
  (t: Tools, places: Readonly<Record<StrandPart, string>>, words: string) =>
  ({ parts }: { parts: readonly StrandPart[] | null }) =>
    parts === null ? words : `${words}: ${t.and(parts.map((part) => places[part]))}`

/** What is not known and hurts nobody. */
export const notKnownWords: typeof english = (t, places) => ({
  "target-level": "Zieltonhöhe",
  finish: "Endton",
  brightest: "Wo am hellsten",
  "root-distance": "Wie nah am Ansatz",
  grey: "Wie viel grau ist",
  upkeep: "Wie oft der Gast wiederkommt",
  level: hair(t, places, "Tonhöhe jetzt"),
  porosity: hair(t, places, "Porosität"),
})

/** What can hurt and was not asked for this visit; an older answer has to be confirmed. */
export const notAskedWords: typeof englishAsked = (t, { strandParts, questions }) => ({
  age: "Alter",
  scalp: ({ before }) =>
    before === null ? "Kopfhaut: heute ansehen" : `Kopfhaut: zuletzt am ${t.date(before)} angesehen`,
  question: ({ question, before, isOld }) => {
    if (!isOld) return questions[question]
    return before === null
      ? `${questions[question]} (an einem anderen Tag beantwortet: bestätigen)`
      : `${questions[question]} (am ${t.date(before)} beantwortet: bestätigen)`
  },
  "which-allergy": "Welche Allergie, seit wann, und wie hat sie sich gezeigt?",
  "black-henna-date": "Wann war das Tattoo mit schwarzem Henna?",
  "changed-since": ({ product }) => `Hauttest mit ${product}: Hat sich seither etwas geändert?`,
  history: hair(t, strandParts, "Haargeschichte"),
  stretch: hair(t, strandParts, "Elastizität, nass gedehnt"),
})
