/**
 * A number as it is said in a sentence: rounded, no idle zeros, never -0, never "NaN". The sentence around it
 * must make sense with "no number" in its place.
 */
export function numberText(value: number, decimals = 2): string {
  if (!Number.isFinite(value)) return "no number"
  const rounded = Number(value.toFixed(decimals))
  return String(rounded === 0 ? 0 : rounded).replace("-", "−")
}
