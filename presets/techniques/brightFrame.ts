import { weaveDepthMm } from "../placement/foils"
import { drifting, held, measure, parallel, slice, weave } from "./build"
import type { TechniquePreset, TechniqueSection } from "./technique"

const edgeMm = 2
const wovenMm = weaveDepthMm.value
/** How much farther from the hairline the partings behind end than they begin. */
const driftMm = { first: 6, second: 12 }
/** The two foils at the edge meet at the corner of the recession with a little hair between. */
const front = [0.3, 1] as const
const side = [1.14, 2.1] as const

/** Two short foils at the hairline, so that the recession is not bridged, and two long ones behind that drift away from it. */
export const brightFrame = {
  id: "bright-frame",
  parameters: {
    depthMm: measure("slice-depth", 3, [2, 4]),
    gapMm: measure("gap", 5, [4, 8]),
    stitch: "medium",
    ways: ["bright-edge", "soft-edge"],
  },
  shape({ depthMm, gapMm, stitch, way }) {
    const isSoft = way === "soft-edge"
    const edgeDepthMm = isSoft ? wovenMm : depthMm
    const firstMm = edgeMm + edgeDepthMm
    const secondMm = firstMm + gapMm + (isSoft ? depthMm : wovenMm)
    const thirdMm = secondMm + gapMm + wovenMm
    const atEdge = ([from, to]: readonly [number, number]): TechniqueSection =>
      isSoft
        ? weave(parallel(from, to, firstMm), wovenMm, "fine")
        : slice(parallel(from, to, firstMm), depthMm)
    const second = drifting([0.4, secondMm], [2.2, secondMm + driftMm.first])
    const sections = [
      atEdge(front),
      atEdge(side),
      isSoft ? slice(second, depthMm) : weave(second, wovenMm, stitch),
      weave(drifting([0.5, thirdMm], [2.3, thirdMm + driftMm.second]), wovenMm, stitch),
    ]
    const told = { isSoft, stitch, gapMm, firstMm, edgeDepthMm, depthMm, wovenMm, driftMm: driftMm.first }
    return { sections: sections.map((each) => held(each, { foilLie: "away-from-face" })), told }
  },
} satisfies TechniquePreset<unknown>
