import type { Head } from "../scalp/head"
import type { BandShape } from "./bandGrid"
import { bandShape } from "./bandShape"
import type { Section } from "./section"
import { dipMm, stitches } from "./sectionKinds"

/** The part of a section's band that its pick-ups reach into: all of it, or no deeper than the tail of the comb dips. */
export const pickedShape = (section: Section, head: Head): BandShape =>
  bandShape(section, head, dipMm(section))

/** Of each column of a band, from one rib to the next, the share of its width that lies within the stitches as they are drawn. */
export function stitchedColumns(section: Section, { alongMm, stations }: BandShape): Float64Array {
  const shares = new Float64Array(stations - 1)
  const laid = stitches(section, alongMm[stations - 1])
  if (laid.length === 0) return shares.fill(1)
  for (let column = 0, first = 0; column < shares.length; column++) {
    const [fromMm, toMm] = [alongMm[column], alongMm[column + 1]]
    while (first < laid.length && laid[first].toMm <= fromMm) first++
    let withinMm = 0
    for (let i = first; i < laid.length && laid[i].fromMm < toMm; i++)
      withinMm += Math.min(toMm, laid[i].toMm) - Math.max(fromMm, laid[i].fromMm)
    shares[column] = toMm > fromMm ? withinMm / (toMm - fromMm) : 0
  }
  return shares
}

/** The share of a parting of this length that lies within the stitches, 0 to 1; all of it where the band is one pick-up. */
export function stitchedShare(section: Section, partingMm: number): number {
  const laid = stitches(section, partingMm)
  return laid.length === 0 ? 1 : laid.reduce((sum, { fromMm, toMm }) => sum + toMm - fromMm, 0) / partingMm
}
