import type { Range, TradeFigures } from "./tradeFigures"

/** What takes up product: panels laid (a foil each, or one board or open-air panel), grams of hair, cm2 of strand to coat. */
export type ProductNeed = { panels: number; hairG: number; strandAreaCm2: number }

/**
 * Grams of mixed product: loss in each panel + soak x hair + coat x strand area, at the low, middle and high figures.
 * Linear, so that the needs of parts add up to the need of the whole.
 */
export function productG(need: ProductNeed, figures: TradeFigures): Range {
  const at = (level: keyof Range) =>
    figures.lossG[level] * need.panels +
    figures.soakGPerG[level] * need.hairG +
    (figures.coatMgPerCm2[level] / 1000) * need.strandAreaCm2
  return { low: at("low"), mid: at("mid"), high: at("high") }
}

/** Ranges summed level by level. */
export const addRanges = (ranges: readonly Range[]): Range =>
  ranges.reduce(
    (sum, range) => ({ low: sum.low + range.low, mid: sum.mid + range.mid, high: sum.high + range.high }),
    { low: 0, mid: 0, high: 0 },
  )
