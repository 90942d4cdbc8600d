import type { BlendProblem } from "./blend"
import { pourDeveloper } from "./pourDeveloper"
import { labelVolume } from "./strength"

/** Grams of one bottle; its volume and the per cent on its label. */
export type PouredBottle = { volume: number; percent: number; grams: number }

/** How a developer that is not in stock is poured from bottles that are, or why it cannot be. */
export type PouringCode =
  | { code: "poured"; bottles: readonly PouredBottle[] }
  | { code: "not-poured"; volume: number; problem: BlendProblem }

/** Null where the developer is in stock itself, or nobody has said what is. */
export function pouringOf(volume: number, bottles: readonly number[], grams: number): PouringCode | null {
  const poured = pourDeveloper(volume, bottles, grams)
  if (!poured) return null
  if (!("parts" in poured)) return { code: "not-poured", volume, problem: poured.problems[0] }
  const [first, second] = poured.parts
  // The second is what is left of the whole, so that both are the developer to the tenth of a gram however they round.
  const firstG = Math.round(10 * first.grams) / 10
  const weighed = second ? [first, { ...second, grams: grams - firstG }] : [first]
  return {
    code: "poured",
    bottles: weighed.map((part) => ({ ...part, volume: labelVolume(part.percent) })),
  }
}
