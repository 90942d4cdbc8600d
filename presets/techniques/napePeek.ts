import { held, measure, parallel, rows, slice } from "./build"
import type { TechniquePreset } from "./technique"

const edgeMm = 3
/** Held down and out, so that the root lies as it will grow. */
const elevationDeg = 45

/** Hidden slices at the nape. */
export const napePeek = {
  id: "nape-peek",
  parameters: {
    depthMm: measure("slice-depth", 4, [3, 5]),
    gapMm: measure("gap", 6, [4, 8]),
    count: measure("slices-a-side", 2, [1, 3], 1),
  },
  shape({ depthMm, gapMm, count }) {
    const behind = rows(count, edgeMm, { depthMm, gapMm })
    return {
      sections: behind.map((behindMm) =>
        held(slice(parallel(6.2, 6.85, behindMm), depthMm), { elevationDeg }),
      ),
      told: { count, depthMm, gapMm, firstMm: behind[0], elevationDeg },
    }
  },
} satisfies TechniquePreset<unknown>
