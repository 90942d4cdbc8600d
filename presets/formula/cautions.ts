/**
 * What must be heeded before anything is mixed, in the order it is told. Gloves and eyes: label words required by
 * Regulation (EC) 1223/2009, Annex III. Air and powder: HSE, COSHH Essentials SR11. Small fresh bowls that are never
 * sealed: Cutan Ocul Toxicol 2016;35:332, and common practice. What may be mixed and how long it stays: FDA, Hair dyes.
 * Flames and aerosols: peroxide and persulfate are oxidisers; common practice, no source.
 * Heat and pain: Ann Dermatol Venereol 2018;145:359-64. Rinsing: Cosmetic Ingredient Review 2001, brief use and thorough
 * rinsing of persulfates.
 */
export const mixingCautions = [
  "directions",
  "tests",
  "gloves",
  "air",
  "bowl",
  "flames",
  "heat",
  "time",
] as const
export type MixingCaution = (typeof mixingCautions)[number]

export const planningCaution =
  "Partline plans the work; it does not diagnose. Tests and the maker’s directions come first, and every figure is an estimate with a range."
