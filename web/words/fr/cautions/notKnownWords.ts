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
    parts === null ? words : `${words} : ${t.and(parts.map((part) => places[part]))}`

/** What is not known and hurts nobody. */
export const notKnownWords = (t: Tools, places: Places) =>
  ({
    "target-level": "Hauteur visée",
    finish: "Reflet final",
    brightest: "Où le plus clair",
    "root-distance": "Distance à la racine",
    grey: "Part de cheveux blancs",
    upkeep: "Fréquence des visites",
    level: hair(t, places, "Hauteur actuelle"),
    porosity: hair(t, places, "Porosité"),
  }) satisfies Sentences<NotKnown>

type Shared = { strandParts: Places; questions: Readonly<Record<Question, string>> }

/** What can hurt and was not asked for this visit; an older answer has to be confirmed. */
export const notAskedWords = (t: Tools, { strandParts, questions }: Shared) =>
  ({
    age: "Âge",
    scalp: ({ before }) =>
      before === null
        ? "Cuir chevelu : à regarder aujourd’hui"
        : `Cuir chevelu : regardé la dernière fois le ${t.date(before)}`,
    question: ({ question, before, isOld }) => {
      if (!isOld) return questions[question]
      return before === null
        ? `${questions[question]} (réponse d’un autre jour : à confirmer)`
        : `${questions[question]} (réponse du ${t.date(before)} : à confirmer)`
    },
    "which-allergy": "Quelle allergie, depuis quand, et comment s’est-elle manifestée ?",
    "black-henna-date": "De quand date le tatouage au henné noir ?",
    "changed-since": ({ product }) => `Touche d’essai (${product}) : quelque chose a-t-il changé depuis ?`,
    history: hair(t, strandParts, "Historique des cheveux"),
    stretch: hair(t, strandParts, "Élasticité, étirés mouillés"),
  }) satisfies Sentences<NotAsked>
