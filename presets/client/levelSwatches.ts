/**
 * A colour for each level 1 to 10, for the eye to find its row by: a picture of the words, never a measured colour.
 * Assumption.
 */
export const levelSwatches: Readonly<Record<number, string>> = {
  1: "#17110f",
  2: "#2a1c17",
  3: "#3d2920",
  4: "#523628",
  5: "#6d4a33",
  6: "#8a6343",
  7: "#a98055",
  8: "#c6a06f",
  9: "#dfc394",
  10: "#f0e0bd",
}
