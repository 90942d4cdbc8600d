import { houseProducts } from "../../presets/formula/houseProducts"
import type { KeptWeighing } from "../../web/core/weighing/salonRecord"

/** A weighed bowl as the salon keeps it. */
export const keptWeighing: KeptWeighing = {
  id: "w1",
  weighedAt: "2026-03-09T10:00:00Z",
  name: "Sample",
  product: houseProducts[0].name,
  kind: "slice",
  panels: 4,
  hairG: 5,
  strandAreaCm2: 1600,
  productG: 17,
  leftOut: false,
}
