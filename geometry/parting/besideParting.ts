import { shareOfCrossing } from "../surface/crossing"
import { cutParting } from "../surface/cutParting"
import { smoothLine } from "../surface/spline"
import type { Surface } from "../surface/surface"
import { lengthMm, mapDistance, type SurfacePath } from "../surface/surfacePath"

const piecesEach = 16

/**
 * The pieces of a parting on either side of a line that it must not cross, so many mm clear of it and no shorter than
 * `leastMm`; the parting itself where it does not reach the line. Of several crossings the first is cut, then the rest.
 */
export function piecesBeside(
  surface: Surface,
  parting: SurfacePath,
  line: SurfacePath,
  { clearMm, leastMm }: { clearMm: number; leastMm: number },
): readonly SurfacePath[] {
  const share = crossingShare(parting, line)
  if (share === null) return [parting]
  const clear = clearMm / Math.max(lengthMm(surface, parting), clearMm)
  const [before, after] = [share - clear, share + clear]
  const pieces = [
    ...(before > 0 ? [cutParting(surface, parting, before)[0]] : []),
    ...(after < 1 ? [cutParting(surface, parting, after)[1]] : []),
  ]
  return pieces
    .filter((piece) => lengthMm(surface, piece) >= leastMm)
    .flatMap((piece) => piecesBeside(surface, piece, line, { clearMm, leastMm }))
}

/** How far along a parting it first meets a line, as a share of its length in the scalp map; null where it does not. */
export function crossingShare(parting: SurfacePath, line: SurfacePath): number | null {
  const points = smoothLine(parting, piecesEach)
  const total = points.slice(1).reduce((sum, at, i) => sum + mapDistance(points[i], at), 0)
  let run = 0
  for (let i = 1; i < points.length; i++) {
    const step = mapDistance(points[i - 1], points[i])
    for (let j = 1; j < line.length; j++) {
      const share = shareOfCrossing(points[i - 1], points[i], line[j - 1], line[j])
      if (share !== null) return (run + share * step) / total
    }
    run += step
  }
  return null
}
