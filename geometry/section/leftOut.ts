import type { KindRow } from "./kindRow"

/** Hair left out on purpose: nothing is picked up and nothing is coated. */
export const leftOut: KindRow<"left-out"> = {
  takenShare: () => 0,
  stitches: () => [],
  productStartMm: () => 0,
}
