import type { NotAsked, NotKnown } from "../../../core/cautions/asking/notAsked"
import type { Question, StrandPart } from "../../../core/document/consultation"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"

type Parts = { parts: readonly StrandPart[] | null }
type Places = Readonly<Record<StrandPart, string>>

/** Hair of which something was not recorded: all of it, or some parts of the strand. */
const hair =
  (t: Tools, places: Places, words: string) =>
  ({ parts }: Parts) =>
    parts === null ? words : `${words}: ${t.and(parts.map((part) => places[part]))}`

/** What is not known and hurts nobody. */
export const notKnownWords = (t: Tools, places: Places) =>
  ({
    "target-level": "Target level",
    finish: "Finish tone",
    brightest: "Brightest where",
    "root-distance": "How close to the root",
    grey: "How much is grey",
    upkeep: "How often the client will come back",
    level: hair(t, places, "Level now"),
    porosity: hair(t, places, "Porosity"),
  }) satisfies Sentences<NotKnown>

type Shared = { strandParts: Places; questions: Readonly<Record<Question, string>> }

/** What can hurt and was not asked for this visit; an older answer has to be confirmed. */
export const notAskedWords = (t: Tools, { strandParts, questions }: Shared) =>
  ({
    age: "Age",
    scalp: ({ before }) =>
      before === null ? "Scalp: look at it today" : `Scalp: last looked at on ${t.date(before)}`,
    question: ({ question, before, isOld }) => {
      if (!isOld) return questions[question]
      return before === null
        ? `${questions[question]} (answered on another day: confirm)`
        : `${questions[question]} (answered on ${t.date(before)}: confirm)`
    },
    "which-allergy": "Which allergy, since when, and how it showed?",
    "black-henna-date": "When was the black henna tattoo?",
    "changed-since": ({ product }) => `Patch test with ${product}: has anything changed since?`,
    history: hair(t, strandParts, "Hair history"),
    stretch: hair(t, strandParts, "Elasticity, stretched wet"),
  }) satisfies Sentences<NotAsked>
