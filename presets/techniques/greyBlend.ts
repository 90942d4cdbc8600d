import { rootDistanceMm } from "../placement/foils"
import { measure, parallel, rows, weave } from "./build"
import type { TechniquePreset } from "./technique"

const edgeMm = 2

/** Fine stitches where grey shows first: along the hairline from the front to the sideburn, and a row or two behind. */
export const greyBlend = {
  id: "grey-blend",
  parameters: {
    depthMm: measure("weave-depth", 5, [4, 6]),
    gapMm: measure("gap", 4, [3, 6]),
    count: measure("rows-a-side", 2, [1, 3], 1),
    stitch: "fine",
  },
  shape({ depthMm, gapMm, count, stitch }) {
    const [first, ...behind] = rows(count, edgeMm, { depthMm, gapMm })
    return {
      sections: [
        weave(parallel(0.15, 1, first), depthMm, stitch),
        weave(parallel(1.12, 2, first), depthMm, stitch),
        weave(parallel(2.12, 2.75, first), depthMm, stitch),
        ...behind.map((behindMm) => weave(parallel(0.3, 2, behindMm), depthMm, stitch)),
      ],
      told: { stitch, count, depthMm, gapMm, firstMm: first, startMm: rootDistanceMm.standard.value },
    }
  },
} satisfies TechniquePreset<unknown>
