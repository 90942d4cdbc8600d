import { edgeAt } from "../painted/edge"
import { fullCm } from "../painted/fullness"
import type { KindRow } from "./kindRow"

/** A painted panel takes all the hair of its band; product begins at the painted edge, and fades in from there. */
export const painted: KindRow<"painted"> = {
  takenShare: () => 1,
  heldShare: () => 1,
  dipMm: () => Number.POSITIVE_INFINITY,
  stitches: (_, partingMm) => [{ fromMm: 0, toMm: partingMm, depthShare: 1 }],
  productStartMm: (section) => section.rootDistanceMm,
  startShare: ({ painting, strand }, along) => edgeAt(painting, strand.from, along),
  fullCm: ({ painting }, coatedCm) => fullCm(painting, coatedCm),
}
