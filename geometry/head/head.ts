import { multiply, type Vec3 } from "../vec3"
import { type LandmarkedHairline, makeHairline } from "./hairline"
import { type HairlineForm, hairlineLandmarks } from "./hairlineLandmarks"
import { headSurface } from "./headSurface"
import type { Surface } from "./surface"

/** A head fitted to a client: factors on the unscaled shape's x, y, z, the scalp, and the edge of its hair. */
export type Head = { axes: Vec3; surface: Surface; hairline: LandmarkedHairline }

/** A head from its axis factors. */
export function makeHeadFromAxes(axes: Vec3, form: HairlineForm): Head {
  const surface = headSurface(axes)
  const controls = hairlineLandmarks[form].map(({ at, ...name }) => ({
    ...name,
    at: surface.toSurface(multiply(at, axes)),
  }))
  return { axes, surface, hairline: makeHairline(surface, form, controls) }
}
