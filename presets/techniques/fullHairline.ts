import { measure, parallel, slice } from "./build"
import type { TechniquePreset } from "./technique"

const [edgeMm, napeEdgeMm] = [2, 3]

/** Fine slices all the way round, begun where hair lifts last. */
export const fullHairline = {
  id: "full-hairline",
  parameters: { depthMm: measure("slice-depth", 3, [2, 4]) },
  shape({ depthMm }) {
    const [faceMm, napeMm] = [edgeMm + depthMm, napeEdgeMm + depthMm]
    return {
      sections: [
        slice(parallel(6.9, 6.15, napeMm), depthMm),
        slice(parallel(5.9, 5.1, napeMm), depthMm),
        slice(parallel(2.7, 2.1, faceMm), depthMm),
        slice(parallel(2, 1.1, faceMm), depthMm),
        slice(parallel(1, 0.15, faceMm), depthMm),
      ],
      told: { depthMm, faceMm, napeMm },
    }
  },
} satisfies TechniquePreset<unknown>
