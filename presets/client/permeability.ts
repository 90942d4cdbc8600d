/**
 * How fast a dye moves into the fibre, 1e-15 m2/s: untreated, after an hour in 6 % peroxide, and after half an hour under
 * bleach cream. J Soc Cosmet Chem 1993;44:358-9, Table III.
 */
export const dyeDiffusion = { untreated: 3.59, peroxideHour: 9.78, creamHalfHour: 45.2 }
