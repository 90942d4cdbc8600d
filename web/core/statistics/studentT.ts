import { betaShare } from "./gamma"

/** Probability that Student's t with `df` degrees of freedom is below `t` (NIST DLMF 8.17 for the beta function). */
export function studentBelow(t: number, df: number): number {
  const tail = betaShare(df / (df + t * t), df / 2, 0.5) / 2
  return t > 0 ? 1 - tail : tail
}

/** The value that Student's t with `df` degrees of freedom stays below with a probability between 0 and 1. */
export function studentQuantile(probability: number, df: number): number {
  if (probability === 0.5) return 0
  if (probability > 0.5) return -lowerQuantile(1 - probability, df)
  return lowerQuantile(probability, df)
}

/** By halving, on the tail's side where nothing cancels. */
function lowerQuantile(probability: number, df: number): number {
  let [low, high] = [-1, 0]
  while (studentBelow(low, df) > probability) low *= 2
  for (let halving = 0; halving < 200 && high - low > 1e-15 * -low; halving++) {
    const middle = (low + high) / 2
    if (studentBelow(middle, df) < probability) low = middle
    else high = middle
  }
  return (low + high) / 2
}
