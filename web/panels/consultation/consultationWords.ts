import { rootDistanceMm } from "../../../presets/foils"
import { levels } from "../../../presets/levels"
import type { FinishTone, HairHistory, HairState, StrandPart, Zone } from "../../plan/consultation"

/** The words of the consultation. */

export const zoneWords: Record<Zone, string> = {
  hairline: "Hairline",
  top: "Top",
  left: "Left side",
  right: "Right side",
  back: "Back",
}
export const partWords: Record<StrandPart, string> = {
  roots: "Roots",
  midLengths: "Mid-lengths",
  ends: "Ends",
}
export const historyWords: Record<HairHistory, string> = {
  coloured: "Coloured",
  lightened: "Lightened",
  permed: "Permed",
  relaxed: "Relaxed",
  henna: "Henna",
  "metallic-salts": "Metallic salts",
}

const optionsOf = <Value extends string>(words: Record<Value, string>) =>
  (Object.keys(words) as Value[]).map((value) => ({ value, label: words[value] }))

export const levelOptions = levels.map(({ level, name }) => ({
  value: String(level),
  label: `${level} ${name}`,
}))
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
export const rootOptions = (["tight", "standard", "soft"] as const).map((word) => ({
  value: String(rootDistanceMm[word].value),
  label: `${word[0].toUpperCase()}${word.slice(1)}, ${rootDistanceMm[word].value} mm`,
}))
export const greyOptions = [
  { value: "0", label: "None" },
  { value: "0.1", label: "A little, 10 %" },
  { value: "0.25", label: "A quarter" },
  { value: "0.5", label: "Half" },
  { value: "0.75", label: "Most" },
  { value: "1", label: "All" },
] as const

export const numberOf = (value: string | null) => (value === null ? null : Number(value))
export const optionOf = (level: number | null) => (level === null ? null : String(level))
