import type { Vec3 } from "../surface/vec3"

/** How the hairline meets the forehead. */
export const hairlineForms = ["round", "straight", "receding", "peaked"] as const
export type HairlineForm = (typeof hairlineForms)[number]

/** The named places of a side, in order from centre front round to centre nape. */
export const landmarkNames = [
  "centre front",
  "recession",
  "temple",
  "sideburn",
  "ear top",
  "behind ear",
  "nape corner",
  "centre nape",
] as const
export type LandmarkName = (typeof landmarkNames)[number]

/** A place the hairline runs through, mm in the head frame of the unscaled head; those without a name shape the curve between. */
export type HairlineLandmark = { name?: LandmarkName; at: Vec3 }
/** The same for every form: down the temple, round the ear, and to the nape. */
const templeToNape: readonly HairlineLandmark[] = [
  { at: [57.5, 51.5, 54] },
  { name: "temple", at: [60, 46.5, 43] },
  { at: [63.5, 36, 32] },
  { at: [66.5, 25, 21] },
  { at: [69, 17, 9] },
  { at: [69.5, 13.5, -4] },
  { name: "sideburn", at: [67.5, 9, -9.5] },
  { at: [68, 4.5, -4] },
  { at: [68.5, 2, 13] },
  { at: [70.5, -4, 28] },
  { name: "ear top", at: [71.5, -14.5, 35.5] },
  { at: [70, -26, 29] },
  { name: "behind ear", at: [66, -32, 13] },
  { at: [59.5, -37.5, -9] },
  { at: [50, -44, -27] },
  { name: "nape corner", at: [38, -48, -43] },
  { at: [20.5, -58.5, -54] },
  { name: "centre nape", at: [0, -62.5, -57] },
]

/**
 * The hairline of each form on the head's right, from centre front to centre nape; the left is its mirror.
 * Centre front: crinion of the 1988 headboard survey (TR-89/044). The rest is an assumption, drawn to give the
 * widths and heights of Kashiyama 2021 and Ceballos 2013; they are directions from the head's centre, so a
 * millimetre or two off the skin does no harm.
 */
export const hairlineLandmarks: Record<HairlineForm, readonly HairlineLandmark[]> = {
  round: [
    { name: "centre front", at: [0, 82.5, 82] },
    { at: [24, 78, 80.5] },
    { name: "recession", at: [40, 68.5, 75] },
    { at: [51, 60, 64] },
    ...templeToNape,
  ],
  straight: [
    { name: "centre front", at: [0, 82.5, 82] },
    { at: [22, 77, 82.5] },
    { at: [38, 67, 83] },
    { name: "recession", at: [48.5, 57, 78.5] },
    { at: [54.5, 53, 67] },
    ...templeToNape,
  ],
  receding: [
    { name: "centre front", at: [0, 82, 83] },
    { at: [17, 76, 86] },
    { at: [34, 58, 92] },
    { name: "recession", at: [47, 41, 91] },
    { at: [54.5, 44, 77] },
    { at: [57, 49, 64] },
    ...templeToNape,
  ],
  peaked: [
    { name: "centre front", at: [0, 87, 75] },
    { at: [10.5, 81, 83.5] },
    { at: [27, 73, 85.5] },
    { name: "recession", at: [44.5, 59, 81] },
    { at: [54, 54, 67] },
    ...templeToNape,
  ],
}
