import type { KindRow } from "./kindRow"

/** Hair left out on purpose: nothing is picked up, nothing is coated, and no other section has it. */
export const leftOut: KindRow<"left-out"> = {
  takenShare: () => 0,
  heldShare: () => 1,
  dipMm: () => Number.POSITIVE_INFINITY,
  stitches: () => [],
  productStartMm: () => 0,
  startShare: () => 0,
  fullCm: () => 0,
}
