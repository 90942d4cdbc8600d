/** How often a fault is tried: a short slice beside the other tests, the whole campaign by `npm run faults`. */
export const howMany = ({ slice, whole }: { slice: number; whole: number }) =>
  process.env.PARTLINE_FAULTS === "long" ? whole : slice
