import { centred, inWords, leftOut, measure, mm, parallel, rows, slice, stitchName, weave } from "./build"
import type { TechniquePreset } from "./technique"

const [babyHairsMm, babyDepthMm] = [4, 3]
/** How far to each side a panel reaches; behind a round forehead it grows narrower by itself. */
const side = 0.85
const [firstEdgeMm, sliceMm] = [5, 4]

export const fringePanel: TechniquePreset = {
  id: "fringe-panel",
  name: "Fringe panel",
  aim: "Lightness in a fringe, softest at its edge.",
  notes:
    "For a fringe that is worn down or parted like a curtain. The edge stays natural, so that it grows out without a line. Cut first, colour after, if the fringe is to be cut.",
  parameters: {
    depthMm: measure("Weave depth", 6, [5, 8]),
    gapMm: measure("Hair left between", 4, [3, 6]),
    count: measure("Weaves", 2, [1, 3], 1),
    stitch: "fine",
  },
  shape({ depthMm, gapMm, count, stitch }) {
    const weaves = rows(count, firstEdgeMm, { depthMm, gapMm })
    const last = weaves[count - 1] + gapMm + sliceMm
    return {
      sections: [
        centred(leftOut(parallel(-side, side, babyHairsMm), babyDepthMm, "Baby hairs")),
        ...weaves.map((behindMm) => centred(weave(parallel(-side, side, behindMm), depthMm, stitch))),
        centred(slice(parallel(-side, side, last), sliceMm)),
      ],
      steps: [
        `Comb out ${mm(babyHairsMm)} of baby hairs along the forehead and clip them away: they stay as they are.`,
        `Part from recession to recession, ${mm(weaves[0])} behind the hairline, and weave ${stitchName[stitch]} out of ${mm(depthMm)} in front of it.`,
        "Place the foil under the stitches, tight at the root but off the skin of the forehead, and coat from the root area to the ends.",
        `Leave ${mm(gapMm)} and repeat, a little narrower each time, until ${inWords(count)} ${count === 1 ? "weave lies" : "weaves lie"} in the fringe.`,
        `Leave ${mm(gapMm)} and close with one slice of ${mm(sliceMm)}, ${mm(last)} behind the hairline. It gives the light that shows through from behind.`,
        "Lay the foils back over the head, so that none lies against the brow. Look at the first one first: hair at the edge is finest.",
      ],
    }
  },
}
