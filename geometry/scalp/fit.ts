import type { Vec3 } from "../surface/vec3"
import { caliperAxes } from "./caliperAxes"
import { fitTapes, type TapeContradiction } from "./fitTapes"
import { type HeadFigures, type HeadSize, headSizeFault, measuresOfNoHead } from "./headSize"

/**
 * The factors on x, y and z that give the unscaled head the measures of a size: exactly for a caliper, those of greatest
 * probability for tapes. Throws a HeadSizeError that names the measure at fault when no head has them.
 */
export function fitAxes(size: HeadSize, figures: HeadFigures): Vec3 {
  const axes = size.kind === "caliper" ? caliperAxes(size) : tapeAxes(size, figures)
  const [least, greatest] = figures.axisFactor
  if (axes?.every((axis) => axis >= least && axis <= greatest)) return axes
  throw headSizeFault(size, figures)
}

type TapeSize = Extract<HeadSize, { kind: "tape" }>

/** Tapes that contradict each other are all taken, each with its weight; only what is no tape of any head is not. */
const tapeAxes = (size: TapeSize, figures: HeadFigures): Vec3 | null =>
  measuresOfNoHead(size, figures).length > 0 ? null : (fitTapes(size, figures)?.axes ?? null)

/** The tape of a size that most contradicts the other two, where one does; it has been taken with its weight all the same. */
export function tapeContradiction(size: HeadSize, figures: HeadFigures): TapeContradiction | null {
  const fit = size.kind === "tape" ? fitTapes(size, figures) : null
  if (!fit) return null
  const { which, byMm, standardDeviations } = fit.strays.reduce((a, b) =>
    b.standardDeviations > a.standardDeviations ? b : a,
  )
  return standardDeviations > figures.tapeToldBeyond ? { code: "tape-contradicts", which, byMm } : null
}
