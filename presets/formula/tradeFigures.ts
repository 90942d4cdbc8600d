import type { Range, TradeFigures } from "../../geometry/hair/tradeFigures"
import { assumption, commonPractice, type Figure, figure } from "../figure/figure"

const regionOrder =
  "assumption; only the order vertex, occipital, temporal is published (Loussouarn 2005), and counts at the temple (J Soc Cosmet Chem 1977;28:220) forbid less than 0.8 at the side"
const productPrior =
  "assumption until the salon's own bowls are weighed; together they give the 3 to 8 g a foil of common practice"

/** Every figure the sums need, with its span and source. */
export const tradeFigureSources = {
  hairGPerCm3: figure(1.32, [1.3, 1.33], "Robbins, Chemical and Physical Behavior of Human Hair"),
  vertexDensity: figure(1, [0.9, 1.1], regionOrder),
  frontalDensity: figure(1, [0.9, 1.1], regionOrder),
  occipitalDensity: figure(0.95, [0.85, 1.05], regionOrder),
  sideDensity: figure(0.8, [0.8, 1], regionOrder),
  hairlineBandDensity: figure(0.7, [0.5, 1], assumption),
  hairlineBandMm: figure(10, [5, 15], assumption),
  hairlineBlendMm: figure(6, [2, 10], assumption),
  regionBlendMm: figure(30, [10, 50], assumption),
  frontLengthFromMm: figure(45, [35, 55], assumption),
  frontLengthToMm: figure(75, [65, 80], assumption),
  backLengthFromMm: figure(-20, [-30, 0], assumption),
  backLengthToMm: figure(-60, [-75, -50], assumption),
  lossG: figure(0.3, [0.2, 0.45], productPrior),
  soakGPerG: figure(2, [1.3, 2.9], productPrior),
  coatMgPerCm2: figure(3, [1.9, 4.5], productPrior),
  foilMarginMm: figure(15, [10, 20], commonPractice),
  foilFoldMm: figure(100, [50, 150], assumption),
  hairsFactor: figure(
    1,
    [0.75, 1.3],
    "assumption; density differs by 25 % between people (J Soc Cosmet Chem 1977;28:220), and published totals for a head by 1.75",
  ),
} satisfies Record<string, Figure>

const figures = tradeFigureSources

/** The figures geometry takes as its argument. */
export const tradeFigures: TradeFigures = {
  hairGPerCm3: figures.hairGPerCm3.value,
  density: {
    vertex: figures.vertexDensity.value,
    frontal: figures.frontalDensity.value,
    occipital: figures.occipitalDensity.value,
    side: figures.sideDensity.value,
    hairlineBand: figures.hairlineBandDensity.value,
  },
  hairlineBandMm: figures.hairlineBandMm.value,
  hairlineBlendMm: figures.hairlineBlendMm.value,
  regionBlendMm: figures.regionBlendMm.value,
  frontLengthMm: { from: figures.frontLengthFromMm.value, to: figures.frontLengthToMm.value },
  backLengthMm: { from: figures.backLengthFromMm.value, to: figures.backLengthToMm.value },
  lossG: rangeOf(figures.lossG),
  soakGPerG: rangeOf(figures.soakGPerG),
  coatMgPerCm2: rangeOf(figures.coatMgPerCm2),
  foilMarginMm: figures.foilMarginMm.value,
  foilFoldMm: figures.foilFoldMm.value,
  hairsFactor: rangeOf(figures.hairsFactor),
}

function rangeOf({ value, range: [low, high] }: Figure): Range {
  return { low, mid: value, high }
}
