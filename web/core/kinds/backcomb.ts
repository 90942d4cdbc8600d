import { backcombDepthMm } from "../../../presets/placement/foils"
import { foiled, type KindRecord } from "./kindRecord"
import { stitchingOf } from "./stitching"

export const backcomb = {
  make: (band, treatment, next) => ({
    kind: "backcomb",
    ...band,
    ...treatment,
    ...next.stitching.backcomb,
    ...next.backcombing,
  }),
  values: (section) => {
    const { base, pushedShare, cushionMm } = section
    return { stitching: stitchingOf(section), backcombing: { base, pushedShare, cushionMm } }
  },
  take: (section, { stitching, backcombing }) => ({ ...section, ...stitching, ...backcombing }),
  depthMm: backcombDepthMm.value,
  isDepthWorded: false,
  depthLabel: "backcomb-depth",
  key: "b",
  fields: ["stitching", "backcombing"],
  traits: {
    isSolid: false,
    isWoven: false,
    hasCushion: true,
    consistency: "thick",
    ...foiled,
    takesRoots: false,
  },
} satisfies KindRecord<"backcomb">
