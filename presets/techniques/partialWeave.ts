import { held, measure, parallel, rows, weave } from "./build"
import type { TechniquePreset } from "./technique"

const edgeMm = 2

/** Rows of stitches behind one another round the front and the sides. */
export const partialWeave = {
  id: "partial-weave",
  parameters: {
    depthMm: measure("weave-depth", 6, [5, 8]),
    gapMm: measure("gap", 4, [3, 6]),
    count: measure("rows-a-side", 5, [3, 6], 1),
    stitch: "fine",
  },
  shape({ depthMm, gapMm, count, stitch }) {
    const behind = rows(count, edgeMm, { depthMm, gapMm })
    return {
      sections: behind.map((behindMm) =>
        held(weave(parallel(0.3, 2.3, behindMm), depthMm, stitch), { foilLie: "away-from-face" }),
      ),
      told: { stitch, count, depthMm, gapMm, firstMm: behind[0], lastMm: behind[count - 1] },
    }
  },
} satisfies TechniquePreset<unknown>
