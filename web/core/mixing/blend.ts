/** Grams of one strength, % w/w. Blending by mass keeps the peroxide exact. */
export type Part = { percent: number; grams: number }
export type Blend = { parts: readonly Part[] } | { problems: readonly BlendProblem[] }

/** Why bottles cannot be poured together to what is wanted. Per cents are % w/w. */
export type BlendProblem =
  | { code: "no-bottles" }
  | { code: "bottle-percent"; percent: number }
  | { code: "want-percent"; percent: number }
  | { code: "no-amount"; grams: number }
  | { code: "want-too-weak"; wantPercent: number; weakestPercent: number }
  | { code: "want-too-strong"; wantPercent: number; strongestPercent: number }

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

function blendProblems(have: readonly number[], want: number, grams: number): BlendProblem[] {
  const problems: BlendProblem[] = []
  if (have.length === 0) problems.push({ code: "no-bottles" })
  for (const percent of have) if (!isPercent(percent)) problems.push({ code: "bottle-percent", percent })
  if (!isPercent(want)) problems.push({ code: "want-percent", percent: want })
  if (!(grams > 0) || !Number.isFinite(grams)) problems.push({ code: "no-amount", grams })
  return problems.length > 0 ? problems : outOfReach(have, want)
}

function outOfReach(have: readonly number[], want: number): BlendProblem[] {
  const [weakest, strongest] = [Math.min(...have), Math.max(...have)]
  if (want < weakest) return [{ code: "want-too-weak", wantPercent: want, weakestPercent: weakest }]
  if (want > strongest) return [{ code: "want-too-strong", wantPercent: want, strongestPercent: strongest }]
  return []
}

const isPercent = (value: number) => value >= 0 && value <= 100
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
