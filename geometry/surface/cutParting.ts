import { smoothLine } from "./spline"
import type { Surface } from "./surface"
import { type MeasuredPath, measurePath, pointAlong, type SurfacePath } from "./surfacePath"

const piecesEach = 16
/** Points of a cut piece stand this near, so that each piece is the whole's own smooth line to its end. */
const spacingMm = 2

/** A parting cut in two, a share (0 to 1) of the way along the smooth line through its points: the line stays where it was. */
export function cutParting(
  surface: Surface,
  parting: SurfacePath,
  share: number,
): [SurfacePath, SurfacePath] {
  const line = measurePath(surface, smoothLine(parting, piecesEach))
  const cutMm = share * line.lengthMm
  return [stretch(line, 0, cutMm), stretch(line, cutMm, line.lengthMm)]
}

function stretch(line: MeasuredPath, fromMm: number, toMm: number): SurfacePath {
  const steps = Math.max(2, Math.ceil((toMm - fromMm) / spacingMm))
  return Array.from({ length: steps + 1 }, (_, i) => pointAlong(line, fromMm + ((toMm - fromMm) * i) / steps))
}
