import { weaveDepthMm } from "../placement/foils"
import { centred, inWords, measure, mm, parallel, rows, slice, stitchName, weave } from "./build"
import type { TechniquePreset } from "./technique"

const [triangleEdgeMm, sideEdgeMm] = [3, 2]
const wovenMm = weaveDepthMm.value
/** How far to each side the triangle reaches at the hairline; its rows grow narrower toward the point by themselves. */
const corner = 0.85
const sideRows = 2

export const fourSectionFrame: TechniquePreset = {
  id: "four-section-frame",
  name: "Four-section face frame with triangle",
  aim: "A triangle over the forehead, two slices down each side.",
  notes:
    "For more cover than a frame of three, with the back left mostly as it is. The triangle brightens the parting and the fringe together. Its point must lie on the parting the client wears.",
  parameters: {
    depthMm: measure("Slice depth", 4, [3, 5]),
    gapMm: measure("Hair left between", 6, [4, 8]),
    count: measure("Rows in the triangle", 3, [2, 4], 1),
    stitch: "medium",
  },
  shape({ depthMm, gapMm, count, stitch }) {
    const base = triangleEdgeMm + depthMm
    const woven = rows(count - 1, base + gapMm, { depthMm: wovenMm, gapMm })
    const sides = rows(sideRows, sideEdgeMm, { depthMm, gapMm })
    return {
      sections: [
        centred(slice(parallel(-corner, corner, base), depthMm)),
        ...woven.map((behindMm) => centred(weave(parallel(-corner, corner, behindMm), wovenMm, stitch))),
        ...sides.map((behindMm, i) => slice(parallel(1.15 + 0.1 * i, 2.4 - 0.1 * i, behindMm), depthMm)),
      ],
      steps: [
        "Divide the head into four: centre front to nape, and ear to ear over the crown. Clip the two back sections away; they stay mostly as they are.",
        "From each recession part back to one point on the parting the client wears: that is the triangle.",
        `In the triangle, part ${mm(base)} behind the hairline and take a slice of ${mm(depthMm)} in front. Place tight at the root, coat both faces.`,
        `Leave ${mm(gapMm)}. Behind it weave ${stitchName[stitch]} out of ${mm(wovenMm)}, narrower as the triangle narrows, until ${inWords(count)} foils lie in it.`,
        `At each side take ${inWords(sideRows)} slices from below the recession toward the sideburn, ${mm(sides[0])} and ${mm(sides[1])} behind the hairline, ${mm(depthMm)} deep.`,
        "Coat from root area to ends, and go round the strand: coated on top only, it lifts unevenly.",
        "Look out for the corner of the recession, where three foils meet: leave some hair between them.",
      ],
    }
  },
}
