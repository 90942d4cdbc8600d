import { weaveDepthMm } from "../../../presets/placement/foils"
import { foiled, type KindRecord } from "./kindRecord"
import { stitchingOf } from "./stitching"

export const weave = {
  make: (band, treatment, next) => ({ kind: "weave", ...band, ...treatment, ...next.stitching.weave }),
  values: (section) => ({ stitching: stitchingOf(section) }),
  take: (section, { stitching }) => ({ ...section, ...stitching }),
  depthMm: weaveDepthMm.value,
  isDepthWorded: false,
  depthLabel: "weave-depth",
  key: "w",
  fields: ["stitching"],
  traits: { isSolid: false, isWoven: true, hasCushion: false, consistency: null, ...foiled },
} satisfies KindRecord<"weave">
