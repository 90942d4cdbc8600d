import type { HeadFigures, HeadSize } from "../../geometry/scalp/headSize"
import { assumption, type Figure, figure } from "../figure/figure"

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

const surveyRows = "ANSUR 1988, NATICK/TR-89/044, individual rows"
const hairRows = (mm: number, skinMm: number) =>
  `${surveyRows}: the tape over hair reads ${mm} mm more than the head of the same length and breadth on its skin, of ${skinMm} mm`
const noSurvey = `${assumption}, no survey has this tape: between the other two`

/** By how much of itself a tape over hair reads more than on the skin; the range is about one standard deviation between people. */
export const hairUnderTape = {
  women: {
    aroundMm: figure(0.0169, [0.005, 0.029], hairRows(9.1, 537)),
    overMm: figure(0.0178, [0, 0.035], hairRows(5.9, 330)),
    frontToNapeMm: figure(0.015, [0, 0.03], noSurvey),
  },
  men: {
    aroundMm: figure(0.005, [-0.005, 0.015], hairRows(2.8, 565)),
    overMm: figure(0.013, [-0.005, 0.03], hairRows(4.5, 349)),
    frontToNapeMm: figure(0.015, [0, 0.03], noSurvey),
  },
}

const valuesOf = <Name extends string>(figures: Record<Name, Figure>) =>
  Object.fromEntries(Object.entries<Figure>(figures).map(([name, { value }]) => [name, value])) as Record<
    Name,
    number
  >

/**
 * The heads of two surveys, mm. Length and breadth with their standard deviations: ANSUR 1988, 2208 women and 1774 men.
 * Height from tragion to top: its headboard (TR-89/044). Length with breadth: its rows; height with either: ANSUR II (TR-15/007).
 */
const surveyedHeads = {
  women: {
    meanMm: { lengthMm: 187.2, breadthMm: 144.4, heightMm: 123.5 },
    sdMm: { lengthMm: 6.4, breadthMm: 4.9, heightMm: 5.5 },
    correlation: { lengthBreadth: 0.14, lengthHeight: 0.285, breadthHeight: 0.317 },
    hairUnderTape: valuesOf(hairUnderTape.women),
  },
  men: {
    meanMm: { lengthMm: 197.1, breadthMm: 151.7, heightMm: 131 },
    sdMm: { lengthMm: 7.1, breadthMm: 5.4, heightMm: 5.7 },
    correlation: { lengthBreadth: 0.14, lengthHeight: 0.295, breadthHeight: 0.304 },
    hairUnderTape: valuesOf(hairUnderTape.men),
  },
}

/** One standard deviation of a tape: where it was laid, how tight it was pulled, how the head's shape differs from the model's. */
export const tapeErrorMm = {
  aroundMm: figure(6, [4, 8], `${surveyRows}: 5.6 to 6.1 mm about the model's circumference`),
  overMm: figure(8, [6, 10], "ANSUR 1988 and USAF 1967: 7.6 mm about a line in length, breadth and height"),
  frontToNapeMm: figure(
    10,
    [8, 12],
    `${assumption}; the front hairline alone differs by 9.5 mm between women (TR-89/044)`,
  ),
}

/** A tape is told from so many standard deviations: 3 in 1000. Assumption. */
const tapeToldBeyond = 3

/** How far an axis of the unscaled head, the mean woman, may be stretched, and how far a tape may be from the usual: EN 960 headforms run from 445 to 645 mm around. */
export const axisFactor = figure(1, [0.75, 1.3], `${assumption}, a little beyond the spans of EN 960`)

/** The figures geometry takes as its argument. */
export const headFigures: HeadFigures = {
  priors: [surveyedHeads.women, surveyedHeads.men],
  tapeErrorMm: valuesOf(tapeErrorMm),
  tapeToldBeyond,
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
  small: { size: { kind: "tape", aroundMm: 520, overMm: 322, frontToNapeMm: 345 } },
  average: { size: startingHeadSize },
  large: { size: { kind: "tape", aroundMm: 620, overMm: 378, frontToNapeMm: 405 } },
} satisfies Record<string, { size: HeadSize }>
export type TriedHead = keyof typeof triedHeads
