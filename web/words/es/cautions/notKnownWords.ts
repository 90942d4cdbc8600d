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
    "target-level": "Nivel deseado",
    finish: "Tono final",
    brightest: "Dónde va más claro",
    "root-distance": "Distancia a la raíz",
    grey: "Cuántas canas",
    upkeep: "Cada cuánto volverá su cliente",
    level: hair(t, places, "Nivel actual"),
    porosity: hair(t, places, "Porosidad"),
  }) satisfies Sentences<NotKnown>

type Shared = { strandParts: Places; questions: Readonly<Record<Question, string>> }

/** What can hurt and was not asked for this visit; an older answer has to be confirmed. */
export const notAskedWords = (t: Tools, { strandParts, questions }: Shared) =>
  ({
    age: "Edad",
    scalp: ({ before }) =>
      before === null
        ? "Cuero cabelludo: mírelo hoy"
        : `Cuero cabelludo: mirado por última vez el ${t.date(before)}`,
    question: ({ question, before, isOld }) => {
      if (!isOld) return questions[question]
      return before === null
        ? `${questions[question]} (respondido otro día: confirme)`
        : `${questions[question]} (respondido el ${t.date(before)}: confirme)`
    },
    "which-allergy": "¿Qué alergia, desde cuándo y cómo se manifestó?",
    "black-henna-date": "¿Cuándo fue el tatuaje de henna negra?",
    "changed-since": ({ product }) => `Prueba de alergia con ${product}: ¿ha cambiado algo desde entonces?`,
    history: hair(t, strandParts, "Historial del cabello"),
    stretch: hair(t, strandParts, "Elasticidad, estirado en mojado"),
  }) satisfies Sentences<NotAsked>
