import type { StrandFigures } from "../../geometry/strands/strandFigures"
import { assumption, type Figure, figure } from "../figure/figure"

/** How hair falls on the screen. It is a drawing, not a forecast: nobody has measured these for a head. */
export const strandSources = {
  count: figure(
    8000,
    [6000, 10000],
    `${assumption}: as many strands as still read as hair and are drawn at once`,
  ),
  liftRadians: figure(0.22, [0.1, 0.8], assumption),
  bendMm: figure(
    50,
    [30, 80],
    "the length over which gravity bends hair, about 5 cm (Goldstein, Warren, Ball, PRL 2012;108:078101)",
  ),
  lowestLayerMm: figure(1.5, [1, 4], assumption),
  highestLayerMm: figure(9, [5, 20], assumption),
  fullLayerAfterMm: figure(45, [20, 80], assumption),
  combedBack: figure(0.08, [0, 1], `${assumption}: the front lies on the cheek unless it is worn otherwise`),
  straySlope: figure(0.02, [0, 0.1], assumption),
  strayMm: figure(130, [60, 250], assumption),
  roundFaceMm: figure(80, [60, 100], `${assumption}: the breadth of a hand`),
} satisfies Record<string, Figure>

const at = strandSources

/** The figures geometry takes as its argument. */
export const strandFigures: StrandFigures = {
  count: at.count.value,
  liftRadians: at.liftRadians.value,
  bendMm: at.bendMm.value,
  layerMm: {
    lowest: at.lowestLayerMm.value,
    highest: at.highestLayerMm.value,
    fullAfterMm: at.fullLayerAfterMm.value,
  },
  combedBack: at.combedBack.value,
  stray: { slope: at.straySlope.value, lengthMm: at.strayMm.value },
  roundFaceMm: at.roundFaceMm.value,
}

/** Heads of hair grown alike, of which the number gives the least and the most. */
export const headsGrown = figure(3, [1, 9], assumption)
