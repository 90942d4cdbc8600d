import type { Surface } from "../surface/surface"
import { measurePath, resampleMeasured, type SurfacePath, smooth } from "../surface/surfacePath"
import { cross, dot, length, normalize, subtract, type Vec3 } from "../surface/vec3"

/** No comb parts a line that bends tighter than this, mm of radius; presets/placement/bends.ts says where it is from. */
export const leastBendMm = 3

/** Bends are told from places so far apart, mm. */
const stepMm = 1.5
const reach = 2
/** A tight place that turns by more than this, radians, turns back on itself: there a parting ends. One that turns less is rounded. */
const hairpin = 1.6
/** A corner is rounded by more than the least: the points of a parting stand 6 mm apart, and the line through them cuts it. */
const roundedMm = 1.2 * leastBendMm
const mostPasses = 120

/** A line without bends tighter than the least: rounded where it turns a corner, and ended before it where it would turn back. */
export function keepLeastBend(surface: Surface, line: SurfacePath): SurfacePath {
  if (line.length < 2) return line
  const measured = measurePath(surface, line)
  const count = Math.ceil(measured.lengthMm / stepMm) + 1
  if (count < 2 * reach + 3) return line
  const path = resampleMeasured(measured, count)
  const runs = tightRuns(bendsOf(surface, path), leastBendMm)
  if (runs.length === 0) return line
  const ends = runs.filter(({ turn }) => Math.abs(turn) > hairpin)
  return rounded(surface, longestBetween(path, ends))
}

/** How much a path turns round each of its points, radians to the left, over two steps to either side; and the radius of that, mm. */
function bendsOf(surface: Surface, path: SurfacePath): { turn: number; radiusMm: number }[] {
  const points = path.map((at): Vec3 => surface.pointAt(at))
  return path.map((at, i) => {
    if (i < reach || i >= path.length - reach) return { turn: 0, radiusMm: Number.POSITIVE_INFINITY }
    const [along, across] = surface.tangentsAt(at)
    const [before, after] = [subtract(points[i], points[i - reach]), subtract(points[i + reach], points[i])]
    const turned = dot(normalize(cross(along, across)), cross(before, after))
    const turn = Math.atan2(turned, dot(before, after))
    return { turn, radiusMm: (length(before) + length(after)) / 2 / Math.max(1e-9, Math.abs(turn)) }
  })
}

type Run = { from: number; to: number; turn: number }

/** Neighbouring points that bend too tightly, and how much the path turns over them. */
function tightRuns(bends: readonly { turn: number; radiusMm: number }[], leastMm: number): Run[] {
  const runs: Run[] = []
  bends.forEach(({ turn, radiusMm }, i) => {
    if (radiusMm >= leastMm) return
    const last = runs.at(-1)
    // Turns are told over two steps to either side, so each turn is met by as many points.
    if (last && i - last.to <= reach)
      runs[runs.length - 1] = { ...last, to: i, turn: last.turn + turn / reach }
    else runs.push({ from: i, to: i, turn: turn / reach })
  })
  return runs
}

/** The longest piece of a path that has no hairpin in it. */
function longestBetween(path: SurfacePath, hairpins: readonly Run[]): SurfacePath {
  let longest: SurfacePath = []
  let from = 0
  for (const end of [...hairpins, { from: path.length, to: path.length }]) {
    const piece = path.slice(from, Math.max(from, end.from))
    if (piece.length > longest.length) longest = piece
    from = end.to + 1
  }
  return longest
}

/** A path whose tight corners are drawn toward the middle of their neighbours until they are tight no more. */
function rounded(surface: Surface, path: SurfacePath): SurfacePath {
  let line = path
  for (let pass = 0; pass < mostPasses && line.length > 2 * reach + 2; pass++) {
    const runs = tightRuns(bendsOf(surface, line), roundedMm)
    if (runs.length === 0) break
    const drawn = smooth(line, 1)
    line = line.map((at, i) => (runs.some(({ from, to }) => i >= from - 1 && i <= to + 1) ? drawn[i] : at))
  }
  return line
}
