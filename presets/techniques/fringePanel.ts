import { held, leftOut, measure, once, parallel, rows, slice, weave } from "./build"
import type { TechniquePreset } from "./technique"

const [babyHairsMm, babyDepthMm] = [4, 3]
/** How far to each side a panel reaches; behind a round forehead it grows narrower by itself. */
const side = 0.85
const [firstEdgeMm, sliceMm] = [5, 4]

/** Weaves in a fringe behind baby hairs that stay, and a slice that shines through from behind. */
export const fringePanel = {
  id: "fringe-panel",
  parameters: {
    depthMm: measure("weave-depth", 6, [5, 8]),
    gapMm: measure("gap", 4, [3, 6]),
    count: measure("weaves", 2, [1, 3], 1),
    stitch: "fine",
  },
  shape({ depthMm, gapMm, count, stitch }) {
    const weaves = rows(count, firstEdgeMm, { depthMm, gapMm })
    const lastMm = weaves[count - 1] + gapMm + sliceMm
    const foils = [
      ...weaves.map((behindMm) => weave(parallel(-side, side, behindMm), depthMm, stitch)),
      slice(parallel(-side, side, lastMm), sliceMm),
    ]
    return {
      sections: [
        once(leftOut(parallel(-side, side, babyHairsMm), babyDepthMm, "baby-hairs")),
        ...foils.map((foil) => once(held(foil, { foilLie: "away-from-face" }))),
      ],
      told: { stitch, count, depthMm, gapMm, babyHairsMm, firstMm: weaves[0], sliceMm, lastMm },
    }
  },
} satisfies TechniquePreset<unknown>
