import type { Surface } from "../surface/surface"
import { layTape, layTapeAround, type Tape, tautMm } from "../surface/tape"
import { length, subtract } from "../surface/vec3"
import { type Landmark, landmarkOn, leftLandmarkOn } from "./landmarks"

/** What a caliper reads on the skin, mm: glabella to the rearmost point, greatest breadth, tragion to the top. */
export type CaliperMm = { lengthMm: number; breadthMm: number; heightMm: number }

/** The three tapes a colourist takes, mm: round the head, ear to ear over the top, front hairline to nape. */
export type TapeMm = { aroundMm: number; overMm: number; frontToNapeMm: number }

/** The survey's other tapes, mm: tragion to tragion over the hairline and over the brow, glabella over the top to the inion. */
export type ArcMm = { crinionArcMm: number; frontalArcMm: number; sagittalArcMm: number }

/** Everything that is measured on a head's skin, mm, with tapes pulled taut. */
export type HeadMeasures = CaliperMm & TapeMm & ArcMm

export function headMeasures(surface: Surface): HeadMeasures {
  const tapes = headTapes(surface)
  return {
    ...caliper(surface),
    aroundMm: tautMm(tapes.aroundMm),
    overMm: tautMm(tapes.overMm),
    frontToNapeMm: tautMm(tapes.frontToNapeMm),
    crinionArcMm: tautMm(earToEar(surface, "crinion")),
    frontalArcMm: tautMm(earToEar(surface, "glabella")),
    sagittalArcMm: tautMm(overTheTop(surface, "glabella", "inion")),
  }
}

/** Where the colourist's three tapes lie on a head. */
export const headTapes = (surface: Surface): Record<keyof TapeMm, Tape> => ({
  aroundMm: layTapeAround(
    surface,
    landmarkOn(surface, "glabella"),
    landmarkOn(surface, "opisthocranion"),
    landmarkOn(surface, "euryon")[0],
  ),
  overMm: earToEar(surface, "vertex"),
  frontToNapeMm: overTheTop(surface, "crinion", "nape"),
})

function caliper(surface: Surface): CaliperMm {
  const [glabella, rearmost] = [landmarkOn(surface, "glabella"), landmarkOn(surface, "opisthocranion")]
  return {
    lengthMm: length(subtract(glabella, rearmost)),
    breadthMm: 2 * landmarkOn(surface, "euryon")[0],
    heightMm: landmarkOn(surface, "vertex")[2],
  }
}

const earToEar = (surface: Surface, over: Landmark) =>
  layTape(
    surface,
    landmarkOn(surface, "tragion"),
    landmarkOn(surface, over),
    leftLandmarkOn(surface, "tragion"),
  )

const overTheTop = (surface: Surface, from: Landmark, to: Landmark) =>
  layTape(surface, landmarkOn(surface, from), landmarkOn(surface, "vertex"), landmarkOn(surface, to))
