import { evenly, type KindRow } from "./kindRow"

/** A slice takes all the hair of its band. */
export const slice: KindRow<"slice"> = {
  takenShare: () => 1,
  heldShare: () => 1,
  dipMm: () => Number.POSITIVE_INFINITY,
  stitches: (_, partingMm) => [{ fromMm: 0, toMm: partingMm, depthShare: 1 }],
  productStartMm: (section) => section.rootDistanceMm,
  ...evenly,
}
