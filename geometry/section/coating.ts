import { isFoil, type Section } from "./section"
import { kindOf } from "./sectionKinds"

/** Which part of each strand is coated and how full, no nearer to the scalp than a start in cm; and on how many faces. */
export type Coating = {
  /** The share of its length at which product begins, so far along the parting, 0 to 1. */
  from(along: number): number
  to: number
  startCm: number
  faces: 0 | 1 | 2
  /** What so many centimetres coated come to, as centimetres of a full coat. */
  full(coatedCm: number): number
}

/** How a section is coated; hair left out is not. */
export function coatingOf(section: Section): Coating {
  if (!isFoil(section)) return { from: () => 0, to: 0, startCm: 0, faces: 0, full: () => 0 }
  const { strand, faces } = section
  const row = kindOf(section)
  return {
    from: (along) => row.startShare(section, along),
    to: strand.to,
    startCm: row.productStartMm(section) / 10,
    faces,
    full: (coatedCm) => row.fullCm(section, coatedCm),
  }
}

/** Centimetres of a full coat on a strand of this length whose product begins at a share of it. */
export const coatedFrom = ({ to, startCm, full }: Coating, fromShare: number, lengthCm: number) =>
  full(Math.max(0, lengthCm * to - Math.max(lengthCm * fromShare, startCm)))

/** The same of a strand that grows so far along the parting, in its middle where nobody says. */
export const coatedCm = (coating: Coating, lengthCm: number, along = 0.5) =>
  coatedFrom(coating, coating.from(along), lengthCm)
