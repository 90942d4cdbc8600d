import { measure, parallel, rows, slice } from "./build"
import type { TechniquePreset } from "./technique"

const edgeMm = 3.5

/** Very fine slices that light shows through. */
export const templeToTemple = {
  id: "temple-to-temple",
  parameters: {
    depthMm: measure("slice-depth", 1.5, [1, 2]),
    gapMm: measure("gap", 4.5, [3, 6]),
    count: measure("slices-a-side", 3, [2, 5], 1),
  },
  shape({ depthMm, gapMm, count }) {
    const behind = rows(count, edgeMm, { depthMm, gapMm })
    return {
      sections: behind.map((behindMm) => slice(parallel(0.2, 1.9, behindMm), depthMm)),
      told: { count, depthMm, gapMm, firstMm: behind[0] },
    }
  },
} satisfies TechniquePreset<unknown>
