/**
 * Natural logarithm of the gamma function, for x above 0: Stirling's series (NIST DLMF 5.11.1), after
 * stepping x up to 12 by gamma(x + 1) = x gamma(x). Good to about 1e-15.
 */
export function logGamma(x: number): number {
  let product = 1
  let shifted = x
  while (shifted < 12) product *= shifted++
  const inverse = 1 / shifted
  const square = inverse * inverse
  const series =
    inverse *
    (1 / 12 -
      square *
        (1 / 360 - square * (1 / 1260 - square * (1 / 1680 - square * (1 / 1188 - square * (691 / 360360))))))
  return (
    (shifted - 0.5) * Math.log(shifted) - shifted + Math.log(2 * Math.PI) / 2 + series - Math.log(product)
  )
}

/**
 * Regularised incomplete beta function I_x(a, b), by the continued fraction of NIST DLMF 8.17.22, summed from
 * the front (Lentz), on the side where it converges fast.
 */
export function betaShare(x: number, a: number, b: number): number {
  if (x <= 0 || x >= 1) return x <= 0 ? 0 : 1
  if (x > (a + 1) / (a + b + 2)) return 1 - betaShare(1 - x, b, a)
  const logFront =
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x) - Math.log(a)
  return Math.exp(logFront) / betaFraction(x, a, b)
}

function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300
  let value = 1
  let above = 1
  let below = 0
  for (let term = 1; term < 10_000; term++) {
    const coefficient = fractionTerm(x, a, b, term)
    below = 1 / (1 + coefficient * below || tiny)
    above = 1 + coefficient / above || tiny
    value *= above * below
    if (Math.abs(above * below - 1) < 1e-16) break
  }
  return value
}

/** The numerators d1, d2, ... of DLMF 8.17.22: odd ones negative, even ones positive. */
function fractionTerm(x: number, a: number, b: number, term: number): number {
  const m = Math.floor(term / 2)
  return term % 2 === 1
    ? (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    : (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
}
