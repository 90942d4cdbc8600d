import type { Surface } from "../surface/surface"
import { multiply, type Vec3 } from "../surface/vec3"
import { type HairlineControl, type LandmarkedHairline, makeHairline } from "./hairline"
import { type HairlineForm, hairlineLandmarks } from "./hairlineLandmarks"
import { headSurface } from "./headSurface"
import { type HairlineMoves, moveControls, noMoves } from "./landmarkMoves"

/** A head fitted to a client: factors on the unscaled shape's x, y, z, the scalp, and the edge of its hair. */
export type Head = { axes: Vec3; surface: Surface; hairline: LandmarkedHairline }

/** A head from its axis factors; one that has the scalp of another may share it. */
export function makeHeadFromAxes(
  axes: Vec3,
  form: HairlineForm,
  moves: HairlineMoves = noMoves,
  surface: Surface = headSurface(axes),
): Head {
  const { left, right } = moveControls(surface, formControls(axes, surface, form), moves)
  return { axes, surface, hairline: makeHairline(surface, form, right, left) }
}

/** The places a form's hairline runs through on the right of a head that nobody has moved. */
export const formControls = (axes: Vec3, surface: Surface, form: HairlineForm): HairlineControl[] =>
  hairlineLandmarks[form].map(({ at, ...name }) => ({
    ...name,
    at: surface.toSurface(multiply(at, axes)),
  }))
