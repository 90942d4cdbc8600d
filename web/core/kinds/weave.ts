import { weaveDepthMm } from "../../../presets/placement/foils"
import type { KindRecord } from "./kindRecord"

export const weave = {
  make: (band, treatment, next) => ({ kind: "weave", ...band, ...treatment, ...next.stitching.weave }),
  depthMm: weaveDepthMm.value,
  fields: ["stitching"],
  traits: { isSolid: false, isWoven: true, hasCushion: false, consistency: null },
} satisfies KindRecord<"weave">
