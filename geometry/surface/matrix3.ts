import { cross, dot, scale, type Vec3 } from "./vec3"

/** Three rows of three numbers, symmetric wherever a spread or a precision is meant. */
export type Matrix3 = readonly [Vec3, Vec3, Vec3]

export const times = ([a, b, c]: Matrix3, v: Vec3): Vec3 => [dot(a, v), dot(b, v), dot(c, v)]

export const determinant = ([a, b, c]: Matrix3) => dot(a, cross(b, c))

/** The inverse of a symmetric matrix, by Cramer's rule. */
export function inverse(matrix: Matrix3): Matrix3 {
  const [a, b, c] = matrix
  const share = 1 / determinant(matrix)
  return [scale(cross(b, c), share), scale(cross(c, a), share), scale(cross(a, b), share)]
}

/** The matrix with weight x v v' added. */
export const addOuter = (matrix: Matrix3, v: Vec3, weight: number): Matrix3 => {
  const row = (i: 0 | 1 | 2): Vec3 => [
    matrix[i][0] + weight * v[i] * v[0],
    matrix[i][1] + weight * v[i] * v[1],
    matrix[i][2] + weight * v[i] * v[2],
  ]
  return [row(0), row(1), row(2)]
}
