import { across, leftOut, measure, once, weave } from "./build"
import type { TechniquePreset } from "./technique"

const veilDepthMm = 8
/** Rows follow each other over the crown, some 15 mm apart: a landmark there is far from the next. */
const [stepsBack, deeperMm] = [0.1, 1.2]

/** Weaves over the crown under a veil that stays natural. */
export const crownHalo = {
  id: "crown-halo",
  parameters: {
    depthMm: measure("weave-depth", 6, [4, 6]),
    count: measure("weaves", 2, [1, 3], 1),
    stitch: "fine",
  },
  shape: ({ depthMm, count, stitch }) => ({
    sections: [
      once(leftOut(across(2, 74), veilDepthMm, "veil")),
      ...Array.from({ length: count }, (_, i) => {
        const [side, behindMm] = [2.35 + stepsBack * i, 78 + deeperMm * i]
        return once(weave(across(side, behindMm), depthMm, stitch))
      }),
    ],
    told: { stitch, count, depthMm, veilMm: veilDepthMm },
  }),
} satisfies TechniquePreset<unknown>
