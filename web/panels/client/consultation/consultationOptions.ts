import { rootDistanceMm } from "../../../../presets/placement/foils"
import type { Words } from "../../../words/en/words"
import { labelledOptions } from "../../fields/options"

/** The choices of the consultation in the words of a language. */

export const yesNoOptions = ({ common: { answers } }: Words) =>
  labelledOptions({ yes: answers.yes, no: answers.no })
export const zoneOptions = ({ client: { hair } }: Words) => labelledOptions(hair.zones)
export const placeOptions = (words: Words) => [
  { value: "all" as const, label: words.client.hair.allOver },
  ...zoneOptions(words),
]
export const partOptions = ({ client: { hair } }: Words) => [
  { value: "all" as const, label: hair.rootToEnds },
  ...labelledOptions(hair.parts),
]
export const rootOptions = ({ client: { goals } }: Words) =>
  (["tight", "standard", "soft"] as const).map((word) => ({
    value: String(rootDistanceMm[word].value),
    label: goals.rootOption(goals.roots[word], rootDistanceMm[word].value),
  }))
/** Weeks between visits. Common practice: a toner 4 to 6, a frame 8 to 12. */
export const upkeepOptions = ["6", "8", "10", "12", "16"].map((weeks) => ({ value: weeks, label: weeks }))

export const numberOf = (value: string | null) => (value === null ? null : Number(value))
export const optionOf = (level: number | null) => (level === null ? null : String(level))
