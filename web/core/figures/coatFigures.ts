import { addRanges, productG } from "../../../geometry/hair/product"
import type { Range, TradeFigures } from "../../../geometry/hair/tradeFigures"
import type { SectionFigures } from "../../../geometry/section/measureSection"
import {
  type CoatPart,
  coatsOf,
  type Foil,
  isFoil,
  rootsOf,
  type Section,
} from "../../../geometry/section/section"
import { remembered } from "../memory/remembered"

/** What one mix along a strand takes: the hair that it coats, and its grams. */
export type CoatFigures = {
  part: CoatPart
  mix: string
  hairG: number
  strandAreaCm2: number
  productG: Range
}

/** The figures of a section and of each coat along its strand, which add up to them; hair left out has none. */
export type CoatedFigures = SectionFigures & { coats: readonly CoatFigures[] }

/** Measures a section as it is coated by some figures. */
type Measure = (section: Section, figures: TradeFigures) => SectionFigures
/** The figures that rule a mix on a section. */
export type Ruling = (mix: string) => TradeFigures

/**
 * A section with its coats. What two mixes coat meets where the roots end, and each takes product by its own figures; what
 * is lost in the foil is shared by the area that each coats.
 */
export function coatedFigures(section: Section, ruling: Ruling, measure: Measure): CoatedFigures {
  if (!isFoil(section)) return { ...measure(section, ruling("")), coats: [] }
  const whole = measure(section, ruling(section.mix))
  const { hairG, strandAreaCm2 } = whole
  if (!rootsOf(section)) {
    const [{ part, mix }] = coatsOf(section)
    return { ...whole, coats: [{ part, mix, hairG, strandAreaCm2, productG: whole.productG }] }
  }
  const ends = measure(endsAlone(section), ruling(section.mix))
  const hair = {
    whole,
    ends,
    roots: { hairG: hairG - ends.hairG, strandAreaCm2: strandAreaCm2 - ends.strandAreaCm2 },
  }
  const coats = coatsOf(section).map(({ part, mix }): CoatFigures => {
    const figures = ruling(mix)
    const own = { hairG: hair[part].hairG, strandAreaCm2: hair[part].strandAreaCm2 }
    const share = strandAreaCm2 > 0 ? own.strandAreaCm2 / strandAreaCm2 : 0
    const lost = lossG(measure(section, figures), figures)
    return {
      part,
      mix,
      ...own,
      productG: addRanges([productG({ panels: 0, ...own }, figures), times(lost, share)]),
    }
  })
  return { ...whole, productG: addRanges(coats.map((coat) => coat.productG)), coats }
}

/** What goes into the foil and on no hair. */
function lossG({ hairG, strandAreaCm2, productG: grams }: SectionFigures, figures: TradeFigures): Range {
  const onHair = productG({ panels: 0, hairG, strandAreaCm2 }, figures)
  return addRanges([grams, times(onHair, -1)])
}

const times = ({ low, mid, high }: Range, by: number): Range => ({
  low: low * by,
  mid: mid * by,
  high: high * by,
})

/** A foil as if its own mix were all that is on it: nothing from its roots. The same object for as long as the foil lives. */
const endsAlone = remembered(
  (foil: Foil): Foil => ({
    ...foil,
    rootDistanceMm: Math.max(foil.rootDistanceMm, rootsOf(foil)?.toMm ?? 0),
  }),
)
