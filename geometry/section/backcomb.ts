import { evenly, type KindRow } from "./kindRow"
import { layStitches } from "./weave"

/** Of a slice or a weave a share is pushed to the root; that share is not coated, and product starts past the cushion. */
export const backcomb: KindRow<"backcomb"> = {
  takenShare: (section) => 1 - section.pushedShare,
  heldShare: () => 1,
  dipMm: ({ base, dipMm }) => (base === "weave" ? dipMm : Number.POSITIVE_INFINITY),
  stitches: (section, partingMm) =>
    section.base === "weave"
      ? layStitches(section, partingMm)
      : [{ fromMm: 0, toMm: partingMm, depthShare: 1 }],
  productStartMm: (section) => Math.max(section.rootDistanceMm, section.cushionMm),
  ...evenly,
}
