import { rootDistanceMm } from "../placement/foils"
import { held, leftOut, measure, parallel, rows, weave } from "./build"
import type { TechniquePreset } from "./technique"

/** The edge stays natural: it breaks first, and takes the least pull. */
const edgesMm = 5
const edgeDepthMm = 4

/** Few wide panels of chunky stitches, clear of the root, behind an edge that is left alone. */
export const coilFrame = {
  id: "coil-frame",
  parameters: {
    depthMm: measure("weave-depth", 8, [6, 10]),
    gapMm: measure("gap", 6, [5, 8]),
    count: measure("rows-a-side", 2, [1, 3], 1),
    stitch: "chunky",
  },
  shape({ depthMm, gapMm, count, stitch }) {
    const [first, ...behind] = rows(count, edgesMm, { depthMm, gapMm })
    const panel = (from: number, to: number, behindMm: number) =>
      held(weave(parallel(from, to, behindMm), depthMm, stitch), {
        rootDistanceMm: rootDistanceMm.soft.value,
        foilLie: "away-from-face",
      })
    return {
      sections: [
        leftOut(parallel(0.2, 2.2, edgesMm), edgeDepthMm, "edges"),
        panel(0.25, 1, first),
        panel(1.2, 2.1, first),
        ...behind.map((behindMm) => panel(0.5, 2, behindMm)),
      ],
      told: { stitch, count, depthMm, gapMm, firstMm: first, edgesMm, startMm: rootDistanceMm.soft.value },
    }
  },
} satisfies TechniquePreset<unknown>
