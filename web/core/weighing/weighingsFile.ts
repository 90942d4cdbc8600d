import type { KeptWeighing } from "./salonRecord"

const columns = ["hairG", "strandAreaCm2", "productG", "foils"] as const

/** Weighings as a list for a spreadsheet, which the command `calibrate` reads too. Rows left out stay out. */
export const weighingsFile = (weighings: readonly KeptWeighing[]): string =>
  [
    columns.join(","),
    ...weighings
      .filter(({ leftOut }) => !leftOut)
      .map(({ hairG, strandAreaCm2, productG, panels }) =>
        [hairG, strandAreaCm2, productG, panels].map((value) => String(Number(value.toFixed(4)))).join(","),
      ),
    "",
  ].join("\n")
