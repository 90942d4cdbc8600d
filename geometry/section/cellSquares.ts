import type { BandShape } from "./bandGrid"
import { cornerOf } from "./cellAreas"

/**
 * The cells of a band as nearly squares in the scalp map. Of each `numbersEach` numbers:
 * 0 to 3 the upright box round it, least and greatest u, least and greatest v;
 * 4, 5 its middle, u and v;
 * 6, 7 and 8, 9 the steps from edge to edge along the parting (s) and across the band (t), over its size;
 * 10, 11 its twist: a place s and t steps off the middle lies at s and t and besides s x t of the twist;
 * 12 which way the steps turn, 1 to the left and -1 to the right.
 */
export type CellSquares = Float64Array
export const numbersEach = 13

const remembered = new WeakMap<BandShape, CellSquares>()

/** The squares of a band, cell by cell, remembered for as long as its grid is. */
export function cellSquares(shape: BandShape): CellSquares {
  const known = remembered.get(shape)
  if (known) return known
  const squares = new Float64Array(numbersEach * shape.areasCm2.length)
  for (let cell = 0; cell < shape.areasCm2.length; cell++) putSquare(shape, cell, squares, numbersEach * cell)
  remembered.set(shape, squares)
  return squares
}

function putSquare({ places, layers }: BandShape, cell: number, into: Float64Array, at: number) {
  const a = 2 * cornerOf(cell, layers)
  const c = a + 2 * layers
  const [ua, ub, uc, ud] = [places[a], places[a + 2], places[c], places[c + 2]]
  const [va, vb, vc, vd] = [places[a + 1], places[a + 3], places[c + 1], places[c + 3]]
  into[at] = Math.min(ua, ub, uc, ud)
  into[at + 1] = Math.max(ua, ub, uc, ud)
  into[at + 2] = Math.min(va, vb, vc, vd)
  into[at + 3] = Math.max(va, vb, vc, vd)
  into[at + 4] = (ua + ub + uc + ud) / 4
  into[at + 5] = (va + vb + vc + vd) / 4
  const [alongU, alongV] = [(uc + ud - ua - ub) / 2, (vc + vd - va - vb) / 2]
  const [acrossU, acrossV] = [(ub + ud - ua - uc) / 2, (vb + vd - va - vc) / 2]
  const size = alongU * acrossV - alongV * acrossU
  into[at + 6] = alongU / size
  into[at + 7] = alongV / size
  into[at + 8] = acrossU / size
  into[at + 9] = acrossV / size
  const [twistU, twistV] = [ua - ub - uc + ud, va - vb - vc + vd]
  into[at + 10] = (twistU * acrossV - twistV * acrossU) / size
  into[at + 11] = (alongU * twistV - alongV * twistU) / size
  into[at + 12] = Math.sign(size)
}
