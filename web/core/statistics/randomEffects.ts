/** What one group says of a figure, with the variance of that by itself. */
export type Estimate = { value: number; variance: number }

/** A figure over groups: its mean and how well that is known, and how far groups differ in truth; variances. */
export type Effects = { groups: number; mean: number; meanVariance: number; between: number }

/**
 * Random effects: value = mean + the group's own departure, of variance `between`, + its error. `between` makes the
 * restricted likelihood greatest (REML: Harville, J Am Stat Assoc 1977;72:320; Viechtbauer, J Educ Behav Stat 2005;30:261).
 */
export function randomEffects(groups: readonly Estimate[]): Effects {
  const between = mostLikely(groups)
  const { mean, weight } = weighed(groups, between)
  return { groups: groups.length, mean, meanVariance: 1 / weight, between }
}

/**
 * How far single units lie apart within their groups, beyond their own errors: the variance for which the weighted
 * squares about each group's mean come to their expectation (Paule, Mandel, J Res Natl Bur Stand 1982;87:377). Null
 * where every group has a single one.
 */
export function withinVariance(groups: readonly (readonly Estimate[])[]): number | null {
  const free = groups.reduce((sum, group) => sum + group.length - 1, 0)
  if (free === 0) return null
  const squares = (within: number) => groups.reduce((sum, group) => sum + squaresAbout(group, within), 0)
  return crossing((within) => squares(within) - free)
}

function squaresAbout(group: readonly Estimate[], within: number): number {
  const { mean } = weighed(group, within)
  return group.reduce((sum, { value, variance }) => sum + (value - mean) ** 2 / (variance + within), 0)
}

/** The mean of estimates that also differ by a variance in truth, and the sum of their weights. */
export function weighed(groups: readonly Estimate[], between: number): { mean: number; weight: number } {
  const weights = groups.map(({ variance }) => 1 / (variance + between))
  const weight = weights.reduce((sum, each) => sum + each, 0)
  return { mean: groups.reduce((sum, { value }, i) => sum + weights[i] * value, 0) / weight, weight }
}

/** The restricted likelihood's slope crosses nought where it is greatest; from above at 0, the groups do not differ. */
function mostLikely(groups: readonly Estimate[]): number {
  if (groups.length < 2) return 0
  return crossing((between) => {
    const { mean, weight } = weighed(groups, between)
    const sumOf = (term: (w: number, gap: number) => number) =>
      groups.reduce((sum, { value, variance }) => sum + term(1 / (variance + between), value - mean), 0)
    return sumOf((w, gap) => w * w * gap * gap - w) + sumOf((w) => w * w) / weight
  })
}

/** Where a falling function passes nought, at 0 or above; by halving. */
function crossing(falling: (at: number) => number): number {
  if (falling(0) <= 0) return 0
  let [low, high] = [0, 1e-6]
  while (falling(high) > 0 && high < 1e12) high *= 4
  for (let halving = 0; halving < 100; halving++) {
    const middle = (low + high) / 2
    if (falling(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}
