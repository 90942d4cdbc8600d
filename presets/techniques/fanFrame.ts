import { backcombDepthMm, weaveDepthMm } from "../placement/foils"
import { backcombedWeave, drifting, held, measure, once, parallel, rows, slice, weave } from "./build"
import type { TechniquePreset, TechniqueSection, TechniqueValues } from "./technique"

const edgeMm = 3
const wovenMm = weaveDepthMm.value
/** How far to each side of the middle the rows over the forehead reach. */
const across = 0.72
/** The partings of the fan start behind the recession and open by so many mm more each toward the sideburn. */
const [nearEnd, farEnd, opensMm] = [1.12, 2.55, 7]
const foilsInFan = 3

/** Rows over the forehead, and on each side a fan of partings that opens from behind the recession toward the sideburn. */
export const fanFrame = {
  id: "fan-frame",
  parameters: {
    depthMm: measure("slice-depth", 4, [3, 5]),
    gapMm: measure("gap", 5, [4, 7]),
    count: measure("rows-over-forehead", 2, [1, 3], 1),
    stitch: "medium",
    ways: ["in-turn", "melted"],
  },
  shape(values) {
    const { depthMm, gapMm, count, stitch, way } = values
    const forehead = rows(count, edgeMm, { depthMm: wovenMm, gapMm })
    return {
      sections: [
        ...forehead.map((behindMm) => once(weave(parallel(-across, across, behindMm), wovenMm, stitch))),
        ...fan(values),
      ].map((each) => held(each, { foilLie: "away-from-face" })),
      told: {
        isMelted: way === "melted",
        stitch,
        count,
        gapMm,
        depthMm,
        wovenMm,
        foreheadMm: forehead[0],
        opensMm,
      },
    }
  },
} satisfies TechniquePreset<unknown>

/** The foils of one fan, each as deep as its kind wants and with a gap to the one before. */
function fan({ depthMm, gapMm, stitch, way }: TechniqueValues): TechniqueSection[] {
  let nearMm = edgeMm - gapMm
  return Array.from({ length: foilsInFan }, (_, i) => {
    const isSlice = way === "melted" ? i === 0 : i % 2 === 0
    const deepMm = isSlice ? depthMm : way === "melted" ? backcombDepthMm.value : wovenMm
    nearMm += gapMm + deepMm
    const parting = drifting([nearEnd, nearMm], [farEnd, nearMm + i * opensMm])
    if (isSlice) return slice(parting, depthMm)
    return way === "melted" ? backcombedWeave(parting, deepMm, stitch) : weave(parting, wovenMm, stitch)
  })
}
