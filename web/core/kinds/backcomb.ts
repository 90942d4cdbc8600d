import { backcombDepthMm } from "../../../presets/placement/foils"
import type { KindRecord } from "./kindRecord"

export const backcomb = {
  make: (band, treatment, next) => ({
    kind: "backcomb",
    ...band,
    ...treatment,
    ...next.stitching.backcomb,
    ...next.backcombing,
  }),
  depthMm: backcombDepthMm.value,
  fields: ["backcombing", "stitching"],
  traits: { isSolid: false, isWoven: false, hasCushion: true, consistency: "thick" },
} satisfies KindRecord<"backcomb">
