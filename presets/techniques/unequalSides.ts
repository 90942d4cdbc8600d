import { weaveDepthMm } from "../placement/foils"
import { held, measure, once, parallel, rows, slice, weave } from "./build"
import { otherWay } from "./sides"
import type { TechniquePreset } from "./technique"

const edgeMm = 3
const wovenMm = weaveDepthMm.value

/** Rows on the side the hair is worn to, and one fine slice on the other, on purpose. */
export const unequalSides = {
  id: "unequal-sides",
  parameters: {
    depthMm: measure("slice-depth", 3, [2, 4]),
    gapMm: measure("gap", 5, [4, 8]),
    count: measure("rows-on-heavy-side", 3, [2, 4], 1),
    stitch: "medium",
    ways: ["heavy-right", "heavy-left"],
  },
  shape({ depthMm, gapMm, count, stitch, way }) {
    const firstMm = edgeMm + depthMm
    const behind = rows(count - 1, firstMm + gapMm, { depthMm: wovenMm, gapMm })
    const sections = [
      slice(parallel(0.3, 2.1, firstMm), depthMm),
      ...behind.map((behindMm) => weave(parallel(0.45, 2.2, behindMm), wovenMm, stitch)),
      slice(parallel(-0.5, -1.9, firstMm), depthMm),
    ]
    const laid = sections.map((each) => once(held(each, { foilLie: "away-from-face" })))
    return {
      sections: way === "heavy-left" ? laid.map(otherWay) : laid,
      told: { isLeft: way === "heavy-left", stitch, count, gapMm, depthMm, wovenMm, firstMm },
    }
  },
} satisfies TechniquePreset<unknown>
