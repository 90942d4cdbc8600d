/**
 * What a plan of a lightening service must say wherever it is read. Gloves and eyes: label words required by
 * Regulation (EC) 1223/2009, Annex III. Air and powder: HSE, COSHH Essentials SR11. Small fresh bowls that are never
 * sealed: Cutan Ocul Toxicol 2016;35:332, and common practice. What may be mixed and how long it stays: FDA, Hair dyes.
 * Heat and pain: Ann Dermatol Venereol 2018;145:359-64. Rinsing: Cosmetic Ingredient Review 2001, brief use and thorough
 * rinsing of persulfates.
 */
export const mixingCautions = [
  "The maker’s directions come first, for the ratio, the developer and the time; then local law and your own judgement.",
  "Strand test first, and any alert test the maker asks for. A test counts once its result has been read.",
  "Gloves on to mix, apply and rinse. Keep product off eyes, lashes and brows; rinse an eye at once.",
  "Mix powder in fresh air, no fan on it. Mix small and fresh, with a lid over the bowl that is never sealed.",
  "Mix only what its maker says may be mixed, in a bowl that is not metal, and throw away what is left over.",
  "Heat only where the sheet allows it. At warmth, tingling or pain take it off and rinse: a burn can show late.",
  "Never longer on the hair than the directions say; then rinse thoroughly. Lightener is never left in.",
] as const

export const planningCaution =
  "Partline plans the work; it does not diagnose. Tests and the maker’s directions come first, and every figure is an estimate with a range."
