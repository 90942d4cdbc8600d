import { weaveDepthMm } from "../placement/foils"
import { drifting, held, measure, once, parallel, slice, weave } from "./build"
import { otherWay } from "./sides"
import type { TechniquePreset } from "./technique"

const edgeMm = 2
const wovenMm = weaveDepthMm.value
/** Where the parting meets the hairline, landmarks to the left of centre front, and how much hair lies beside it untouched. */
const [footAt, besideFoot] = [-0.6, 0.12]

/** A frame hung from a side parting: long over the forehead on the one side, short on the other, nothing across it. */
export const offCentreFrame = {
  id: "off-centre-frame",
  parameters: {
    depthMm: measure("slice-depth", 3, [2, 4]),
    gapMm: measure("gap", 5, [4, 8]),
    stitch: "medium",
    ways: ["parted-left", "parted-right"],
  },
  shape({ depthMm, gapMm, stitch, way }) {
    const firstMm = edgeMm + depthMm
    const secondMm = firstMm + gapMm + wovenMm
    const [long, short] = [footAt + besideFoot, footAt - besideFoot]
    const sections = [
      slice(parallel(long, 0.92, firstMm), depthMm),
      slice(parallel(1.08, 2.1, firstMm), depthMm),
      weave(parallel(long, 0.9, secondMm), wovenMm, stitch),
      weave(drifting([1.15, secondMm], [2.2, secondMm + 6]), wovenMm, stitch),
      slice(parallel(short, -1.9, firstMm), depthMm),
      weave(drifting([short - 0.15, secondMm], [-2, secondMm + 6]), wovenMm, stitch),
    ]
    const laid = sections.map((each) => once(held(each, { foilLie: "away-from-face" })))
    return {
      sections: way === "parted-right" ? laid.map(otherWay) : laid,
      told: { isRight: way === "parted-right", stitch, gapMm, depthMm, wovenMm, firstMm },
    }
  },
} satisfies TechniquePreset<unknown>
