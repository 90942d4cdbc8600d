/** Small symmetric positive matrices, a few rows: enough for the regression of a few coefficients. */
export type Vector = readonly number[]
export type Matrix = readonly Vector[]

export const dot = (a: Vector, b: Vector) => a.reduce((sum, value, i) => sum + value * b[i], 0)
export const times = (matrix: Matrix, vector: Vector): number[] => matrix.map((row) => dot(row, vector))
export const add = (a: Vector, b: Vector): number[] => a.map((value, i) => value + b[i])
export const subtract = (a: Vector, b: Vector): number[] => a.map((value, i) => value - b[i])
export const diagonal = (values: Vector): Matrix =>
  values.map((value, i) => values.map((_, j) => (i === j ? value : 0)))

/** `matrix` plus the sum of weight x x', the information of weighted rows. */
export const addOuter = (matrix: Matrix, rows: readonly { x: Vector; weight: number }[]): Matrix =>
  matrix.map((line, i) =>
    line.map((value, j) => rows.reduce((sum, { x, weight }) => sum + weight * x[i] * x[j], value)),
  )

/** The lower triangle L with L L' = matrix. */
export function cholesky(matrix: Matrix): Matrix {
  const lower = matrix.map((line) => line.map(() => 0))
  for (let i = 0; i < matrix.length; i++)
    for (let j = 0; j <= i; j++) {
      const rest = matrix[i][j] - dot(lower[i].slice(0, j), lower[j].slice(0, j))
      if (i === j && !(rest > 0)) throw new Error(`row ${i} of the matrix adds no information: ${rest}`)
      lower[i][j] = i === j ? Math.sqrt(rest) : rest / lower[j][j]
    }
  return lower
}

/** The x with L L' x = right. */
export function solve(lower: Matrix, right: Vector): number[] {
  const x = [...right]
  for (let i = 0; i < x.length; i++) x[i] = (x[i] - dot(lower[i].slice(0, i), x)) / lower[i][i]
  for (let i = x.length - 1; i >= 0; i--) {
    for (let j = i + 1; j < x.length; j++) x[i] -= lower[j][i] * x[j]
    x[i] /= lower[i][i]
  }
  return x
}

/** x' M^-1 x for M = L L': how uncertain a combination x of the unknowns is. */
export const inverseForm = (lower: Matrix, x: Vector) => dot(x, solve(lower, x))

/** log |M| for M = L L'. */
export const logDeterminant = (lower: Matrix) => 2 * lower.reduce((sum, row, i) => sum + Math.log(row[i]), 0)
