import type { Range, TradeFigures } from "../../geometry/hair/tradeFigures"
import { assumption, commonPractice, type Figure, figure } from "../figure/figure"

const regionOrder =
  "only the order vertex, occipital, temporal is published (Loussouarn 2005); frontal and crown, parietal and occipital are alike (Barman 1965)"
const atTheTemple =
  "211 counted at the temple (J Soc Cosmet Chem 1977;28:220) of 223 over the whole head (Barman 1965)"
const lossPrior = "common practice, no source: 0.5 to 1 g of a foil's product stays on foil and brush"
const productPrior =
  "assumption until the salon's own bowls are weighed, set so that a frame of 6 to 10 foils takes 20 to 40 g (common practice, no source)"

/** Every figure the sums need, with its span and source. */
export const tradeFigureSources = {
  hairGPerCm3: figure(1.32, [1.3, 1.33], "Robbins, Chemical and Physical Behavior of Human Hair"),
  vertexDensity: figure(1.06, [0.95, 1.15], regionOrder),
  frontalDensity: figure(1.06, [0.95, 1.15], regionOrder),
  occipitalDensity: figure(1.02, [0.9, 1.1], regionOrder),
  sideDensity: figure(0.95, [0.85, 1.05], atTheTemple),
  hairlineBandDensity: figure(0.88, [0.6, 1], assumption),
  hairlineBandMm: figure(10, [5, 15], assumption),
  hairlineBlendMm: figure(6, [2, 10], assumption),
  regionBlendMm: figure(30, [10, 50], assumption),
  frontLengthFromMm: figure(45, [35, 55], assumption),
  frontLengthToMm: figure(75, [65, 80], assumption),
  backLengthFromMm: figure(-20, [-30, 0], assumption),
  backLengthToMm: figure(-60, [-75, -50], assumption),
  lossG: figure(0.75, [0.5, 1], lossPrior),
  soakGPerG: figure(2.2, [1.4, 3], productPrior),
  coatMgPerCm2: figure(3.3, [2, 4.6], productPrior),
  foilMarginMm: figure(15, [10, 20], commonPractice),
  foilFoldMm: figure(100, [50, 150], assumption),
  hairsFactor: figure(
    1,
    [0.78, 1.35],
    "175 to 300 hairs a cm2 between people about a mean of 223 (Barman 1965): so far may a head be from the word chosen for it",
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
