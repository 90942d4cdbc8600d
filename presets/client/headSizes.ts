import type { HeadFigures, HeadSize } from "../../geometry/scalp/headSize"
import { assumption, figure } from "../figure/figure"

const survey = "ANSUR 1988, NATICK/TR-89/044: 5th percentile of 2208 women to 95th of 1774 men"
const headboard =
  "ANSUR 1988 headboard survey, TR-89/044: mean less 1.645 SD of women to mean plus 1.645 SD of men"

/** What a head usually measures, mm: the mean woman and the span. Calipers on the skin, tapes over the hair. */
export const headMeasureSources = {
  lengthMm: figure(187.2, [176, 208], survey),
  breadthMm: figure(144.4, [137, 161], survey),
  heightMm: figure(123.5, [114, 140], headboard),
  aroundMm: figure(546.2, [523, 593], survey),
  overMm: figure(336.4, [315, 375], survey),
  frontToNapeMm: figure(
    361,
    [343, 394],
    "common practice in wig making: average 14 to 14.5 in, petite 13.5, large 15.5; no survey has it",
  ),
}

/** By how much of itself a tape over hair reads more than on the skin. */
export const hairUnderTape = figure(
  0.015,
  [0, 0.03],
  "tapes of ANSUR 1988 over hair against taut arcs on head meshes of the same length, breadth and height: 0.01 to 0.03 more",
)

/** How far an axis of the unscaled head, the mean woman, may be stretched: EN 960 headforms run from 445 to 645 mm around. */
export const axisFactor = figure(1, [0.75, 1.3], `${assumption}, a little beyond the spans of EN 960`)

/** The figures geometry takes as its argument. */
export const headFigures: HeadFigures = {
  hairUnderTape: hairUnderTape.value,
  usualMm: {
    lengthMm: headMeasureSources.lengthMm.range,
    breadthMm: headMeasureSources.breadthMm.range,
    heightMm: headMeasureSources.heightMm.range,
    aroundMm: headMeasureSources.aroundMm.range,
    overMm: headMeasureSources.overMm.range,
    frontToNapeMm: headMeasureSources.frontToNapeMm.range,
  },
  axisFactor: axisFactor.range,
}

/** The head a plan starts from: the mean woman of 1988. */
export const startingHeadSize: HeadSize = {
  kind: "caliper",
  lengthMm: headMeasureSources.lengthMm.value,
  breadthMm: headMeasureSources.breadthMm.value,
  heightMm: headMeasureSources.heightMm.value,
}

/**
 * Heads to try a technique on, round figures: a little smaller around than the 5th percentile of women (523 mm, ANSUR
 * 1988), larger than the 95th of men (601 mm, ANSUR II); the other tapes in proportion to the mean woman's. Assumption.
 */
export const triedHeads = {
  small: { name: "Small, 52 cm", size: { kind: "tape", aroundMm: 520, overMm: 322, frontToNapeMm: 345 } },
  average: { name: "Average", size: startingHeadSize },
  large: { name: "Large, 62 cm", size: { kind: "tape", aroundMm: 620, overMm: 378, frontToNapeMm: 405 } },
} satisfies Record<string, { name: string; size: HeadSize }>
export type TriedHead = keyof typeof triedHeads
