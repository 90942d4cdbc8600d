import { subtract, type Vec3 } from "../surface/vec3"
import { fitTapes } from "./fitTapes"
import type { CaliperMm } from "./headMeasures"
import { type HeadFigures, type HeadSize, headSizeFault } from "./headSize"
import { headSurface } from "./headSurface"
import { type Landmark, landmarkOn } from "./landmarks"

/**
 * The factors on x, y and z that give the unscaled head the measures of a size: exactly for a caliper, to a
 * thousandth of a millimetre for tapes. Throws a RangeError that names the measure at fault when no head has them.
 */
export function fitAxes(size: HeadSize, figures: HeadFigures): Vec3 {
  const axes = size.kind === "caliper" ? fitCaliper(size) : fitTapes(size, figures.hairUnderTape)
  const [least, greatest] = figures.axisFactor
  if (axes?.every((axis) => axis >= least && axis <= greatest)) return axes
  throw headSizeFault(size, figures)
}

/** Breadth and height scale with x and z; length lies in y and z, so y takes what z leaves of it. */
function fitCaliper({ lengthMm, breadthMm, heightMm }: CaliperMm): Vec3 {
  const [, forward, up] = subtract(unscaled("glabella"), unscaled("opisthocranion"))
  const z = heightMm / unscaled("vertex")[2]
  return [breadthMm / (2 * unscaled("euryon")[0]), Math.sqrt(lengthMm ** 2 - (z * up) ** 2) / forward, z]
}

const unscaled = (name: Landmark) => landmarkOn(headSurface([1, 1, 1]), name)
