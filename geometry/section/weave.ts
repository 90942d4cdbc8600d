import { evenly, type KindRow, type Stitch } from "./kindRow"
import type { Band, Stitching } from "./section"

/** A weave takes the hair within its stitches, as deep as the tail of the comb dips. */
export const weave: KindRow<"weave"> = {
  takenShare: () => 1,
  heldShare: () => 1,
  dipMm: ({ dipMm }) => dipMm,
  stitches: layStitches,
  productStartMm: (section) => section.rootDistanceMm,
  ...evenly,
}

type Stitched = Stitching & Pick<Band, "depthMm">

/** As many whole stitches as the parting holds, at their true pitch and centred; one that fills it when none fits. */
export function layStitches({ stitchMm, gapMm, dipMm, depthMm }: Stitched, partingMm: number): Stitch[] {
  const pitchMm = stitchMm + gapMm
  const count = Math.max(1, Math.floor((partingMm + gapMm) / pitchMm + 1e-9))
  const widthMm = Math.min(stitchMm, partingMm)
  const firstMm = (partingMm - (count - 1) * pitchMm - widthMm) / 2
  return Array.from({ length: count }, (_, i) => {
    const fromMm = firstMm + i * pitchMm
    const share = (fromMm + widthMm / 2) / partingMm
    const hereMm = depthMm.start + (depthMm.end - depthMm.start) * share
    return { fromMm, toMm: fromMm + widthMm, depthShare: Math.min(1, dipMm / hereMm) }
  })
}
