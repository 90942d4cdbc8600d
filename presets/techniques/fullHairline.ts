import { measure, mm, parallel, slice } from "./build"
import type { TechniquePreset } from "./technique"

const [edgeMm, napeEdgeMm] = [2, 3]

export const fullHairline: TechniquePreset = {
  id: "full-hairline",
  name: "Full hairline",
  aim: "Fine slices all the way round, for hair worn up.",
  notes:
    "For hair that is tied up or tucked behind the ears. The hair behind the ear and at the nape is coarser and darker: it lifts later than the temple. Not over skin that is sore.",
  parameters: { depthMm: measure("Slice depth", 3, [2, 4]) },
  shape({ depthMm }) {
    const [face, nape] = [edgeMm + depthMm, napeEdgeMm + depthMm]
    return {
      sections: [
        slice(parallel(0.15, 1, face), depthMm),
        slice(parallel(1.1, 2, face), depthMm),
        slice(parallel(2.1, 2.7, face), depthMm),
        slice(parallel(5.1, 5.9, nape), depthMm),
        slice(parallel(6.15, 6.9, nape), depthMm),
      ],
      steps: [
        "Comb the hair the way it is worn up, and see which edge shows.",
        `Begin at the nape, where hair lifts last: part ${mm(nape)} inside the hairline from beside the centre to the corner, and take ${mm(depthMm)} toward the edge.`,
        `Go on up behind the ear with a slice of the same depth, ${mm(nape)} inside the hairline. Fold the ear forward and cover it.`,
        `Then the front: sideburn to temple, temple to recession, recession to beside the centre, each ${mm(face)} behind the hairline and ${mm(depthMm)} deep.`,
        "Place each foil tight at the root and coat both faces. At the sideburn use a short foil, so that its weight does not pull it off.",
        "Keep product off the skin outside the hairline; wipe at once what gets there.",
        "Do the other side in the same order. Look at the temples first: they are ready before the nape.",
      ],
    }
  },
}
