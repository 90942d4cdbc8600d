import { paintFromShare, panelDepthMm, usualPainting } from "../../../presets/placement/painting"
import type { KindRecord } from "./kindRecord"

export const painted = {
  make: (band, treatment) => ({
    kind: "painted",
    ...band,
    ...treatment,
    faces: 1,
    carrier: { ...treatment.carrier, kind: "open-air" },
    strand: { from: paintFromShare.value, to: 1 },
    painting: usualPainting,
  }),
  values: ({ painting }) => ({ painting }),
  take: (section, { painting }) => ({ ...section, painting: { ...section.painting, ...painting } }),
  depthMm: panelDepthMm.value,
  isDepthWorded: false,
  depthLabel: "depth",
  key: "p",
  fields: ["painting"],
  traits: {
    isSolid: false,
    isWoven: false,
    hasCushion: false,
    consistency: "thick",
    carriers: ["open-air", "film"],
    ownTreatment: ["faces", "carrier", "strand"],
    takesRoots: false,
    piece: "panel",
  },
} satisfies KindRecord<"painted">
