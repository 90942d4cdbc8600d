import { sliceDepthMm } from "../../../presets/placement/foils"
import type { KindRecord } from "./kindRecord"

export const slice = {
  make: (band, treatment) => ({ kind: "slice", ...band, ...treatment }),
  depthMm: sliceDepthMm.fine.value,
  fields: [],
  traits: { isSolid: true, isWoven: false, hasCushion: false, consistency: null },
} satisfies KindRecord<"slice">
