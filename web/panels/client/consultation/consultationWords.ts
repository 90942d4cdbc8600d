import { rootDistanceMm } from "../../../../presets/placement/foils"
import type { FinishTone, HairState } from "../../../core/document/consultation"
import { capital } from "../../../core/text/capital"
import { partWords, zoneWords } from "../../../core/text/hairTerms"

/** The words of the consultation. */

const optionsOf = <Value extends string>(words: Record<Value, string>) =>
  (Object.keys(words) as Value[]).map((value) => ({ value, label: words[value] }))

export const finishOptions = optionsOf<FinishTone>({ cool: "Cool", neutral: "Neutral", warm: "Warm" })
export const porosityOptions = optionsOf<NonNullable<HairState["porosity"]>>({
  low: "Low",
  usual: "Usual",
  high: "High",
})
export const stretchOptions = optionsOf<NonNullable<HairState["stretch"]>>({
  "springs-back": "Springs back",
  "stays-stretched": "Stays stretched",
  breaks: "Breaks",
})
export const scalpOptions = optionsOf({
  calm: "Calm",
  sensitive: "Sensitive",
  irritated: "Irritated",
  broken: "Broken",
} as const)
export const yesNoOptions = optionsOf({ yes: "Yes", no: "No" } as const)

export const zoneOptions = optionsOf(zoneWords)
export const placeOptions = [{ value: "all", label: "All over" }, ...zoneOptions] as const
export const partOptions = [{ value: "all", label: "Root to ends" }, ...optionsOf(partWords)] as const
export const rootOptions = (["tight", "standard", "soft"] as const).map((word) => ({
  value: String(rootDistanceMm[word].value),
  label: `${capital(word)}, ${rootDistanceMm[word].value} mm`,
}))
/** Weeks between visits. Common practice: a toner 4 to 6, a frame 8 to 12. */
export const upkeepOptions = ["6", "8", "10", "12", "16"].map((weeks) => ({ value: weeks, label: weeks }))
export const greyOptions = [
  { value: "0", label: "None" },
  { value: "0.1", label: "A tenth" },
  { value: "0.25", label: "A quarter" },
  { value: "0.5", label: "Half" },
  { value: "0.75", label: "Most" },
  { value: "1", label: "All" },
] as const

export const numberOf = (value: string | null) => (value === null ? null : Number(value))
export const optionOf = (level: number | null) => (level === null ? null : String(level))
