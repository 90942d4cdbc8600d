/**
 * Gauss-Newton with differences for slopes: the parameters that make the sum of squared residuals least.
 * `steps` are the differences, one a parameter.
 */
export function leastSquares(
  residuals: (p: number[]) => number[],
  start: number[],
  steps: number[],
): number[] {
  let at = start
  let now = residuals(at)
  for (let i = 0; i < 20; i++) {
    const columns = steps.map((step, k) =>
      residuals(at.with(k, at[k] + step)).map((value, row) => (value - now[row]) / step),
    )
    const move = solve(columns, now)
    const next = at.map((value, k) => value + move[k])
    const then = residuals(next)
    const gain = squares(now) - squares(then)
    if (gain < 0) return at
    ;[at, now] = [next, then]
    if (gain < 1e-9 * squares(then)) return at
  }
  return at
}

const dot = (a: number[], b: number[]) => a.reduce((sum, value, i) => sum + value * b[i], 0)
const squares = (a: number[]) => dot(a, a)

/** The normal equations, eliminated with the largest pivot first. */
function solve(columns: number[][], now: number[]): number[] {
  const n = columns.length
  const rows = columns.map((a) => [...columns.map((b) => dot(a, b)), -dot(a, now)])
  for (let k = 0; k < n; k++) {
    const pivot = rows
      .slice(k)
      .reduce((best, row, i) => (Math.abs(row[k]) > Math.abs(rows[best][k]) ? k + i : best), k)
    ;[rows[k], rows[pivot]] = [rows[pivot], rows[k]]
    for (let i = 0; i < n; i++) {
      const share = i === k ? 0 : rows[i][k] / rows[k][k]
      rows[i] = rows[i].map((value, j) => value - share * rows[k][j])
    }
  }
  return rows.map((row, k) => row[n] / row[k])
}
