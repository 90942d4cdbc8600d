import { hairsRange } from "../../../geometry/hair/hair"
import { addRanges } from "../../../geometry/hair/product"
import type { Range, TradeFigures } from "../../../geometry/hair/tradeFigures"
import type { SectionFigures } from "../../../geometry/section/measureSection"

/** The figures of several foils together. */
export type TotalsFigures = {
  foils: number
  areaCm2: number
  hairs: Range
  hairG: number
  strandAreaCm2: number
  productG: Range
}

export function totalsOf(figures: readonly SectionFigures[], trade: TradeFigures): TotalsFigures {
  const sum = (of: (figures: SectionFigures) => number) =>
    figures.reduce((total, each) => total + of(each), 0)
  return {
    foils: sum(({ foils }) => foils),
    areaCm2: sum(({ areaCm2 }) => areaCm2),
    hairs: hairsRange(
      sum(({ hairs }) => hairs),
      trade,
    ),
    hairG: sum(({ hairG }) => hairG),
    strandAreaCm2: sum(({ strandAreaCm2 }) => strandAreaCm2),
    productG: addRanges(figures.map(({ productG }) => productG)),
  }
}

/** What foils as drawn come to beyond what they really take. */
export function takenTwiceBy(foils: readonly { figures: SectionFigures; net: SectionFigures }[]): {
  hairG: number
  productG: Range
} {
  const less = (of: (figures: SectionFigures) => number) =>
    foils.reduce((sum, { figures, net }) => sum + of(figures) - of(net), 0)
  return {
    hairG: less(({ hairG }) => hairG),
    productG: {
      low: less(({ productG }) => productG.low),
      mid: less(({ productG }) => productG.mid),
      high: less(({ productG }) => productG.high),
    },
  }
}
