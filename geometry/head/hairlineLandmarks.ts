import type { Vec3 } from "../vec3"

/** How the hairline meets the forehead. */
export const hairlineForms = ["round", "straight", "receding", "peaked"] as const
export type HairlineForm = (typeof hairlineForms)[number]

/** A place the hairline runs through, mm in the head frame of the unscaled head; those without a name shape the curve between. */
export type HairlineLandmark = { name?: LandmarkName; at: Vec3 }
export type LandmarkName =
  | "centre front"
  | "recession"
  | "temple"
  | "sideburn"
  | "ear top"
  | "behind ear"
  | "nape corner"
  | "centre nape"

/**
 * The hairline of each form on the head's right, from centre front to centre nape; the left is its mirror.
 * Centre front: crinion of the 1988 headboard survey (TR-89/044). The rest is an assumption, drawn to give the
 * widths and heights of Kashiyama 2021 and Ceballos 2013; they are directions from the head's centre, so a
 * millimetre or two off the skin does no harm.
 */
export const hairlineLandmarks: Record<HairlineForm, readonly HairlineLandmark[]> = {
  round: [...front([0, 82, 82], [33, 77, 84], [56, 60, 80], [63, 50, 45]), ...sideAndBack()],
  straight: [...front([0, 82, 82], [33, 77, 84], [56, 60, 80], [63, 50, 45]), ...sideAndBack()],
  receding: [...front([0, 82, 82], [33, 77, 84], [56, 60, 80], [63, 50, 45]), ...sideAndBack()],
  peaked: [...front([0, 82, 82], [33, 77, 84], [56, 60, 80], [63, 50, 45]), ...sideAndBack()],
}

function front(centre: Vec3, mound: Vec3, recession: Vec3, temple: Vec3): HairlineLandmark[] {
  return [
    { name: "centre front", at: centre },
    { at: mound },
    { name: "recession", at: recession },
    { name: "temple", at: temple },
  ]
}

function sideAndBack(): HairlineLandmark[] {
  return [
    { at: [67, 20, 20] },
    { at: [68, 11, -8] },
    { name: "sideburn", at: [68, 5, -5] },
    { at: [68, -2, 28] },
    { name: "ear top", at: [70, -14, 36] },
    { name: "behind ear", at: [70, -32, 10] },
    { at: [66, -40, -25] },
    { name: "nape corner", at: [48, -62, -58] },
    { name: "centre nape", at: [0, -80, -62] },
  ]
}
