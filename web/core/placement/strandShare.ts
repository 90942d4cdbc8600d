import { regrowthMm } from "../../../presets/placement/foils"

/** The share of a strand that product covers from the root to so many mm down, never so little that nothing shows. */
export const shareTo = (mm: number, lengthCm: number) =>
  Math.min(1, Math.max(0.05, Math.round((mm / 10 / Math.max(lengthCm, 1)) * 100) / 100))

/** The share of a strand that new growth takes up. */
export const regrowthShare = (lengthCm: number) => shareTo(regrowthMm.value, lengthCm)
