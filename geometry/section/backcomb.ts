import type { KindRow } from "./kindRow"
import type { Section } from "./section"
import { layStitches, stitchedShare } from "./weave"

/** Of a slice or a weave a share is pushed to the root; that share is not coated, and product starts past the cushion. */
export const backcomb: KindRow<"backcomb"> = {
  takenShare: (section, depthsMm) => baseShare(section, depthsMm) * (1 - section.pushedShare),
  heldShare: baseShare,
  stitches: (section, partingMm) =>
    section.base === "weave"
      ? layStitches(section, partingMm)
      : [{ fromMm: 0, toMm: partingMm, depthShare: 1 }],
  productStartMm: (section) => Math.max(section.rootDistanceMm, section.cushionMm),
}

function baseShare(section: Section<"backcomb">, depthsMm?: ArrayLike<number>) {
  return section.base === "weave" ? stitchedShare(section, depthsMm) : 1
}
