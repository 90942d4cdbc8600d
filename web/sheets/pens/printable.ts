import { isFoil, type Section } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import type { Fonts } from "./fontFile"

/** What stands for a letter the sheets' typeface does not have. */
export const missingLetter = "\u25a1"

const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu
const letters = new Intl.Segmenter("en", { granularity: "grapheme" })

/** The text as it can be printed: one box for each letter, sign or picture that the typeface lacks. */
export function toPrintable(text: string, { regular }: Fonts): string {
  return Array.from(letters.segment(text.normalize("NFC")), ({ segment }) => {
    const letter = segment.replace(/\s/g, " ").replace(unseen, "")
    return [...letter].every((each) => regular.has(each.codePointAt(0) ?? 0)) ? letter : missingLetter
  }).join("")
}

/** The plan with every text that reaches paper made printable, and whether no letter was lost by it. */
export function toPrintablePlan(plan: Plan, fonts: Fonts): { plan: Plan; isWhole: boolean } {
  let isWhole = true
  const print = (text: string) => {
    const printed = toPrintable(text, fonts)
    isWhole &&= !printed.includes(missingLetter)
    return printed
  }
  const printed = {
    ...plan,
    name: print(plan.name),
    client: { ...plan.client, initials: print(plan.client.initials) },
    mixes: plan.mixes.map((mix) => ({ ...mix, product: print(mix.product) })),
    sections: plan.sections.map(
      (section): Section => (isFoil(section) ? section : { ...section, name: print(section.name) }),
    ),
  }
  return { plan: printed, isWhole }
}
