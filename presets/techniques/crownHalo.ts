import { across, centred, inWords, leftOut, measure, mm, stitchName, weave } from "./build"
import type { TechniquePreset } from "./technique"

const veilDepthMm = 8

export const crownHalo: TechniquePreset = {
  id: "crown-halo",
  name: "Crown halo",
  aim: "Light across the crown, under a natural veil.",
  notes:
    "For light that moves when the head turns, with no regrowth line on top. The veil must be thick enough to cover the foils when the hair is worn down.",
  parameters: {
    depthMm: measure("Weave depth", 6, [4, 6]),
    count: measure("Weaves", 2, [1, 3], 1),
    stitch: "fine",
  },
  shape: ({ depthMm, count, stitch }) => ({
    sections: [
      centred(leftOut(across(2, 74), veilDepthMm, "Veil")),
      ...Array.from({ length: count }, (_, i) => {
        const [side, behindMm] = [2.35 + 0.35 * i, 78 + 4 * i]
        return centred(weave(across(side, behindMm), depthMm, stitch))
      }),
    ],
    steps: [
      `Comb a veil of ${mm(veilDepthMm)} forward across the top, from side to side in front of the crown, and clip it: it stays natural.`,
      `Behind it part straight across with the tail comb, from one side to the other, and weave ${stitchName[stitch]} out of ${mm(depthMm)}.`,
      "Use two or three foils side by side; lift the hair straight up from the head so that the roots are not pressed down.",
      count === 1
        ? "Let the veil fall over the foils and see that nothing shows through."
        : `Go on toward the crown until ${inWords(count)} rows lie there, each parted parallel to the one before. Then let the veil fall over them and see that nothing shows through.`,
      "The crown is warm and covered: look here before you look at the sides.",
    ],
  }),
}
