import { inWords, measure, mm, parallel, rows, slice } from "./build"
import type { TechniquePreset } from "./technique"

const edgeMm = 3.5

export const templeToTemple: TechniquePreset = {
  id: "temple-to-temple",
  name: "Temple-to-temple micro-slices",
  aim: "Whisper-thin slices a side that let light through.",
  notes:
    "For a first brightening that nobody can name. A micro-slice is one to two millimetres: deeper, and it reads as a stripe. It lifts fast because little hair holds much product.",
  parameters: {
    depthMm: measure("Slice depth", 1.5, [1, 2]),
    gapMm: measure("Hair left between", 4.5, [3, 6]),
    count: measure("Slices a side", 3, [2, 5], 1),
  },
  shape: ({ depthMm, gapMm, count }) => ({
    sections: rows(count, edgeMm, { depthMm, gapMm }).map((behindMm) =>
      slice(parallel(0.2, 1.9, behindMm), depthMm),
    ),
    steps: [
      `Part from beside the centre front to the temple, ${mm(edgeMm + depthMm)} behind the hairline and parallel to it.`,
      `With the end of the tail take ${mm(depthMm)} in front of the parting. Hold it up against the light: you should see through it all along.`,
      "Place a foil tight at the root, lay the slice flat and coat it thinly on both faces.",
      `Leave ${mm(gapMm)} of hair lying over the foil, and part again parallel to the first. ${count > 2 ? `Go on until ${inWords(count)} slices lie on this side` : "Take the second slice the same way"}.`,
      "Then the other side, counting the same rows from the same landmark.",
      "Look early, after five minutes: slices this thin are ahead of any weave.",
    ],
  }),
}
