import { numberText } from "../text/numberText"

/** Grams of one strength, % w/w. Blending by mass keeps the peroxide exact. */
export type Part = { percent: number; grams: number }
export type Blend = { parts: readonly Part[] } | { problems: readonly string[] }

/**
 * Grams of each bottle that together are `grams` at `want` per cent. A bottle that is right by itself is
 * poured alone; bottles that take no part are left out.
 */
export function blend(have: readonly number[], want: number, grams: number): Blend {
  const problems = blendProblems(have, want, grams)
  if (problems.length > 0) return { problems }
  const shares = blendShares(have, want)
  return { parts: shares.map(({ percent, share }) => ({ percent, grams: grams * share })) }
}

/**
 * Shares of each bottle, 1 in all, by alligation: every stronger bottle takes what the weaker ones fall
 * short by in all, every weaker one what the stronger ones exceed by. With two bottles this is
 * (want - low) : (high - want).
 */
export function blendShares(have: readonly number[], want: number): { percent: number; share: number }[] {
  if (have.includes(want)) return [{ percent: want, share: 1 }]
  const bottles = [...new Set(have)]
  const excess = sum(bottles.map((percent) => Math.max(0, percent - want)))
  const shortfall = sum(bottles.map((percent) => Math.max(0, want - percent)))
  const parts = bottles.map((percent) => ({ percent, part: percent > want ? shortfall : excess }))
  const whole = sum(parts.map(({ part }) => part))
  return parts.map(({ percent, part }) => ({ percent, share: part / whole }))
}

/** Strength of what has been poured together, % w/w. */
export const strengthOf = (parts: readonly Part[]) =>
  sum(parts.map(({ percent, grams }) => percent * grams)) / sum(parts.map(({ grams }) => grams))

/** The bottle, or the nearest two, that give a strength from a whole shelf; null where none do. */
export function bottlesFor(shelf: readonly number[], want: number): readonly number[] | null {
  if (shelf.includes(want)) return [want]
  const stronger = shelf.filter((percent) => percent > want)
  const weaker = shelf.filter((percent) => percent < want)
  return stronger.length > 0 && weaker.length > 0 ? [Math.min(...stronger), Math.max(...weaker)] : null
}

function blendProblems(have: readonly number[], want: number, grams: number): string[] {
  const problems: string[] = []
  if (have.length === 0) problems.push("have: name at least one bottle, for example 12,3.")
  for (const percent of have)
    if (!isPercent(percent))
      problems.push(`have: ${numberText(percent)} is not a strength; give per cents from 0 to 100.`)
  if (!isPercent(want))
    problems.push(`want: ${numberText(want)} is not a strength; give a per cent from 0 to 100.`)
  if (!(grams > 0) || !Number.isFinite(grams))
    problems.push(`grams: ${numberText(grams)} is no amount; give grams above 0.`)
  return problems.length > 0 ? problems : outOfReach(have, want)
}

function outOfReach(have: readonly number[], want: number): string[] {
  const [weakest, strongest] = [Math.min(...have), Math.max(...have)]
  if (want < weakest)
    return [
      `want: ${numberText(want)} % is weaker than the weakest bottle, ${numberText(weakest)} %; add a weaker bottle to have.`,
    ]
  if (want > strongest)
    return [
      `want: ${numberText(want)} % is stronger than the strongest bottle, ${numberText(strongest)} %; choose a weaker strength.`,
    ]
  return []
}

const isPercent = (value: number) => value >= 0 && value <= 100
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
