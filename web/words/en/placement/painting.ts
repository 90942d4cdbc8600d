import type { BandName, EdgeShape } from "../../../../geometry/painted/painting"
import type { Tools } from "../../tools"

/** A painted panel, laid flat. */
export const painting = (t: Tools) => ({
  title: "Panel laid flat",
  edge: "Edge",
  edges: { straight: "Straight", v: "V", w: "W", u: "U", freehand: "Freehand" } satisfies Record<
    EdgeShape,
    string
  >,
  high: "Edge starts at",
  low: "Edge drops by",
  feather: "Feather",
  saturation: "How full",
  bands: { soft: "Soft edge", middle: "Middle", full: "Full" } satisfies Record<BandName, string>,
  assumed: "Assumption: nobody has weighed how full a feathered edge is.",
  share: (share: number) => `${t.percent(share)} of the panel painted`,
  size: ({ widthMm, lengthMm }: { widthMm: number; lengthMm: number }) =>
    `Panel ${t.mm(widthMm)} × ${t.mm(lengthMm)}`,
  draw: "Draw the edge across the panel with a finger or pen.",
  at: ({ place, of }: { place: number; of: number }) => `Edge, place ${t.whole(place)} of ${t.whole(of)}`,
})
