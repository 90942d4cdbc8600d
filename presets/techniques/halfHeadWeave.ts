import { inWords, measure, mm, parallel, rows, stitchName, weave } from "./build"
import type { TechniquePreset } from "./technique"

const edgeMm = 2

export const halfHeadWeave: TechniquePreset = {
  id: "half-head-weave",
  name: "Half-head weave",
  aim: "Stitches through top and sides, left natural underneath.",
  notes:
    "For an all-over lift that still has depth. Many foils: the first has long been on when the last is placed, so take each off when it is ready, or mix the first bowl weaker.",
  parameters: {
    depthMm: measure("Weave depth", 6, [5, 8]),
    gapMm: measure("Hair left between", 4, [3, 6]),
    count: measure("Rows a side", 5, [3, 6], 1),
    stitch: "fine",
  },
  shape({ depthMm, gapMm, count, stitch }) {
    const behind = rows(count, edgeMm, { depthMm, gapMm })
    return {
      sections: behind.map((behindMm) => weave(parallel(0.3, 2.3, behindMm), depthMm, stitch)),
      steps: [
        "Section off the top and sides from the back: ear to ear over the crown. The back is clipped away.",
        `Begin at the hairline: part ${mm(behind[0])} behind it from beside the centre front to below the temple, and weave ${stitchName[stitch]} out of ${mm(depthMm)}.`,
        "Dip the tail evenly: the depth of the dip decides how bright the row is. Place the foil tight at the root and coat both faces.",
        `Leave ${mm(gapMm)} and part again, parallel, until ${inWords(count)} rows lie on this side; the last lies ${mm(behind[count - 1])} behind the hairline.`,
        "Fold each foil once and lay it on the one before, away from the face. Wide rows need two foils side by side, overlapping by a finger.",
        "Do the other side in the same order. Mix again before the bowl stiffens.",
        "Look at the first row of the first side first, then every five minutes.",
      ],
    }
  },
}
