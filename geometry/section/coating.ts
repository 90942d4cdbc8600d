import { isFoil, type Section } from "./section"
import { kindOf } from "./sectionKinds"

/** Which part of each strand is coated, as shares of its length, no nearer to the scalp than a start in cm; and on how many faces. */
export type Coating = { from: number; to: number; startCm: number; faces: 0 | 1 | 2 }

/** How a section is coated; hair left out is not. */
export function coatingOf(section: Section): Coating {
  if (!isFoil(section)) return { from: 0, to: 0, startCm: 0, faces: 0 }
  const { strand, faces } = section
  return { from: strand.from, to: strand.to, startCm: kindOf(section).productStartMm(section) / 10, faces }
}

/** Centimetres coated of a strand of this length. */
export const coatedCm = ({ from, to, startCm }: Coating, lengthCm: number) =>
  Math.max(0, lengthCm * to - Math.max(lengthCm * from, startCm))
