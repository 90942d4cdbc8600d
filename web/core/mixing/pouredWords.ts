import { numberText } from "../text/numberText"
import { pourDeveloper } from "./pourDeveloper"
import { labelVolume } from "./strength"

/** How a developer that is not on the shelf is poured from two that are, or why it cannot be; null where it stands there. */
export function pouredWords(volume: number, bottles: readonly number[], grams: number): string | null {
  const poured = pourDeveloper(volume, bottles, grams)
  if (!poured) return null
  if (!("parts" in poured))
    return `${numberText(volume)} vol cannot be poured from your bottles: ${poured.problems.map(withoutField).join(" ")}`
  const [first, second] = poured.parts
  const firstG = Math.round(10 * first.grams) / 10
  const weighed = second ? [first, { ...second, grams: grams - firstG }] : [first]
  const parts = weighed.map(
    ({ percent, grams }) =>
      `${numberText(grams, 1)} g of ${numberText(labelVolume(percent))} vol (${numberText(percent, 1)} %)`,
  )
  return `Developer by weight: ${parts.join(" + ")}.`
}

const withoutField = (problem: string) => problem.replace(/^\w+: /, "")
