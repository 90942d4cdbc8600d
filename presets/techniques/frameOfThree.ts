import { backcombDepthMm } from "../placement/foils"
import { backcombedWeave, drifting, measure, mm, parallel, slice, stitchName } from "./build"
import type { TechniquePreset } from "./technique"

const edgeMm = 2
const wovenMm = backcombDepthMm.value
/** How much farther from the hairline the diagonal slice and the weave end than they begin. */
const [backMm, meltMm] = [10, 9]

export const frameOfThree: TechniquePreset = {
  id: "frame-of-three",
  name: "Hairline frame of three",
  aim: "A bright edge that melts into the hair behind it.",
  notes:
    "For a bright frame that grows out soft. Brightest at the edge, so the slices stay thin. Fine hair at the temple lifts first: start there last, or look there first. Leave baby hairs alone.",
  parameters: {
    depthMm: measure("Slice depth", 3, [2, 5]),
    gapMm: measure("Hair left between", 5, [4, 8]),
    stitch: "medium",
  },
  shape({ depthMm, gapMm, stitch }) {
    const first = edgeMm + depthMm
    const second = first + gapMm + depthMm
    const third = second + gapMm + wovenMm
    return {
      sections: [
        slice(parallel(0.35, 2, first), depthMm),
        slice(drifting([0.45, second], [2.2, second + backMm]), depthMm),
        backcombedWeave(drifting([0.5, third], [2.3, third + meltMm]), wovenMm, stitch),
      ],
      steps: [
        `Part from beside the centre front to the temple, ${mm(first)} behind the hairline and parallel to it. Comb the baby hairs forward out of the way.`,
        `Take the slice in front of the parting, ${mm(depthMm)} deep: thin enough to see light through.`,
        "Place the foil tight at the root under the slice, lay the hair flat and coat both faces from root area to ends. Look out for bleeding at the hairline: keep the fold clean.",
        `Leave ${mm(gapMm)}, then part diagonally back: the end at the temple lies ${mm(backMm)} farther from the face. Take ${mm(depthMm)} in front of it, place and coat as before.`,
        `Leave ${mm(gapMm)}. Part once more behind, take ${mm(wovenMm)} and weave ${stitchName[stitch]} out of it.`,
        "Push about half of each stitch back to the root in two to four strokes. Place the foil under what is left and start the product past the cushion, which stays dark and melts into the hair behind.",
        "Do the other side the same way, from the same landmark, before the first foil is looked at.",
      ],
    }
  },
}
