import { sliceDepthMm } from "../../../presets/placement/foils"
import { foiled, type KindRecord } from "./kindRecord"

export const slice = {
  make: (band, treatment) => ({ kind: "slice", ...band, ...treatment }),
  values: () => ({}),
  take: (section) => section,
  depthMm: sliceDepthMm.fine.value,
  isDepthWorded: true,
  depthLabel: "slice-depth",
  key: "s",
  fields: [],
  traits: { isSolid: true, isWoven: false, hasCushion: false, consistency: null, ...foiled },
} satisfies KindRecord<"slice">
