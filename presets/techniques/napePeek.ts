import { inWords, measure, mm, parallel, rows, slice } from "./build"
import type { TechniquePreset } from "./technique"

const edgeMm = 3

export const napePeek: TechniquePreset = {
  id: "nape-peek",
  name: "Nape peek",
  aim: "Slices at the nape that show when hair is lifted.",
  notes:
    "For a surprise under dark hair, or hair worn half up. Nape hair is coarse and slow: it may need its own bowl, or be placed first. Not where a collar rubs sore skin.",
  parameters: {
    depthMm: measure("Slice depth", 4, [3, 5]),
    gapMm: measure("Hair left between", 6, [4, 8]),
    count: measure("Slices a side", 2, [1, 3], 1),
  },
  shape({ depthMm, gapMm, count }) {
    const behind = rows(count, edgeMm, { depthMm, gapMm })
    return {
      sections: behind.map((behindMm) => slice(parallel(6.2, 6.85, behindMm), depthMm)),
      steps: [
        "Lean the head forward and clip everything above the occipital bone away.",
        `Part ${mm(behind[0])} inside the hairline, from the corner of the nape to beside the centre, and take ${mm(depthMm)} toward the neck.`,
        "Place the foil with the hair held down and out, not up, so that the root lies as it will grow. Coat both faces.",
        count === 1
          ? "Let the hair above fall over it and look whether it shows as much as is wanted."
          : `Leave ${mm(gapMm)} and take the next one above, until ${inWords(count)} slices lie on this side.`,
        "Do the other side. Keep product off the neck, where collars rub.",
      ],
    }
  },
}
