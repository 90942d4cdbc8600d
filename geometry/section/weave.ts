import type { KindRow, Stitch } from "./kindRow"
import type { Band, Stitching } from "./section"

/** A weave takes stitches: their share of the parting, times the share of the depth to which the tail dips. */
export const weave: KindRow<"weave"> = {
  takenShare: stitchedShare,
  heldShare: stitchedShare,
  stitches: layStitches,
  productStartMm: (section) => section.rootDistanceMm,
}

type Stitched = Stitching & Pick<Band, "depthMm">

/** stitch / (stitch + gap) x the part of the band no deeper than the dip; the ribs' depths in mm stand at even steps. */
export function stitchedShare({ stitchMm, gapMm, dipMm, depthMm }: Stitched, depthsMm?: ArrayLike<number>) {
  return (stitchMm / (stitchMm + gapMm)) * dippedShare(dipMm, depthsMm ?? [depthMm.start, depthMm.end])
}

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

/** The share of a band, whose depth runs straight from each rib to the next, that lies within the dip of the parting. */
function dippedShare(dipMm: number, depthsMm: ArrayLike<number>): number {
  let [within, whole] = [0, 0]
  for (let i = 1; i < depthsMm.length; i++) {
    within += meanWithin(dipMm, depthsMm[i - 1], depthsMm[i])
    whole += (depthsMm[i - 1] + depthsMm[i]) / 2
  }
  return whole > 0 ? within / whole : 1
}

/** The mean of min(dip, depth) while depth runs from one value to another. */
function meanWithin(dipMm: number, fromMm: number, toMm: number): number {
  const [shallow, deep] = [Math.min(fromMm, toMm), Math.max(fromMm, toMm)]
  if (deep <= dipMm) return (shallow + deep) / 2
  if (shallow >= dipMm) return dipMm
  const shareShallow = (dipMm - shallow) / (deep - shallow)
  return (shareShallow * (shallow + dipMm)) / 2 + (1 - shareShallow) * dipMm
}
