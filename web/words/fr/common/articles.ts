import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { type CommonWords, common } from "./common"

/** Names with the article that a French sentence needs before them. */
export const articles = (t: Tools, { sectionName, landmarks }: CommonWords = common(t)) => ({
  /** "la papillote 3": every section is feminine, so "de" and "à" stand before it unchanged. */
  the: (section: SectionNameCode) => `la ${say<SectionNameCode>(sectionName, section)}`,
  /** "la papillote 3", "les papillotes 1 et 2". */
  theFoils: (numbers: readonly number[]) => {
    const list = t.and(numbers.map(t.whole))
    return t.count(numbers.length, { one: `la papillote ${list}`, other: `les papillotes ${list}` })
  },
  /** "du golfe", "de la tempe". */
  ofLandmark: (name: LandmarkName) => withOf(name, landmarks[name]),
  /** "au golfe", "à la tempe". */
  toLandmark: (name: LandmarkName) => withTo(name, landmarks[name]),
  /** "jusqu’au golfe", "jusqu’à la tempe". */
  untilLandmark: (name: LandmarkName) =>
    name === "behind ear" ? `jusque ${landmarks[name]}` : `jusqu’${withTo(name, landmarks[name])}`,
  /** From the landmark of one side to that of the other: "d’un golfe à l’autre"; the middle has one only. */
  fromOneToOther: (name: LandmarkName) => {
    if (name === "centre front" || name === "centre nape")
      return `de part et d’autre ${withOf(name, landmarks[name])}`
    if (name === "behind ear") return "de derrière une oreille à derrière l’autre"
    return feminine.includes(name)
      ? `d’une ${landmarks[name]} à l’autre`
      : `d’un ${landmarks[name]} à l’autre`
  },
})

const feminine: readonly LandmarkName[] = ["temple", "sideburn"]

/** Behind the ear is a place without an article. */
const withOf = (name: LandmarkName, word: string) =>
  name === "behind ear" ? `de ${word}` : feminine.includes(name) ? `de la ${word}` : `du ${word}`

const withTo = (name: LandmarkName, word: string) =>
  name === "behind ear" ? word : feminine.includes(name) ? `à la ${word}` : `au ${word}`
