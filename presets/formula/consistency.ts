import { assumption, commonPractice, figure } from "../figure/figure"

/**
 * Parts of developer to one of lightener by how the mix should stand: thick for open air and backcombed work,
 * like thick yoghurt for foils, loose when much hair must be covered fast.
 */
export const consistencies = {
  thick: { developerParts: figure(1.5, [1, 1.5], commonPractice) },
  creamy: { developerParts: figure(2, [1.5, 2.5], commonPractice) },
  loose: { developerParts: figure(2.5, [2, 3], commonPractice) },
}
/**
 * Hair to coat of one section, cm2, from which it is much hair to cover fast: twice that of the usual slice, 7 cm wide and
 * 30 cm long, coated on both faces.
 */
export const wideCoverageCm2 = figure(840, [600, 1200], assumption)

export type Consistency = keyof typeof consistencies
