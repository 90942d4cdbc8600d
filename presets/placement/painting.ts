import type { Painting } from "../../geometry/painted/painting"
import { assumption, commonPractice, figure } from "../figure/figure"

/** How deep a panel for painting is parted, mm. Assumption. */
export const panelDepthMm = figure(10, [5, 20], assumption)

/** Where painting starts at its highest, and how much lower a V, W or U hangs, as shares of the hair's length. Assumptions. */
export const paintFromShare = figure(0.35, [0.1, 0.8], assumption)
export const edgeDropShare = figure(0.2, [0.05, 0.5], assumption)

/** How far product fades in from the edge, mm. Assumption. */
export const featherMm = figure(40, [10, 80], assumption)

/** How full each band is painted, as shares of a full coat. Assumptions: nobody has weighed them. */
export const saturation = {
  soft: figure(0.3, [0.15, 0.5], assumption),
  middle: figure(0.65, [0.5, 0.85], assumption),
  full: figure(1, [0.9, 1], commonPractice),
}

/** At how many even steps across the panel a freehand edge is kept. Assumption. */
export const drawnSteps = 9

/** How a panel is painted where nobody says otherwise: a V, with a freehand edge that begins as one. */
export const usualPainting: Painting = {
  edge: "v",
  dropShare: edgeDropShare.value,
  drawn: [0, 0.25, 0.5, 0.75, 1, 0.75, 0.5, 0.25, 0],
  featherMm: featherMm.value,
  saturation: {
    soft: saturation.soft.value,
    middle: saturation.middle.value,
    full: saturation.full.value,
  },
}
