import type { Head } from "../../geometry/scalp/head"
import { type SurfacePoint, surfacePoint } from "../../geometry/surface/frames"
import type { Surface } from "../../geometry/surface/surface"
import { areaElement } from "../../geometry/surface/surfacePatch"
import {
  cross,
  distance,
  dot,
  lerp,
  normalize,
  scale,
  subtract,
  type Vec3,
} from "../../geometry/surface/vec3"

/**
 * What a band covers, by a fine mesh of the scalp and none of the ways of the program: every cell of the mesh is asked
 * for the feet of the perpendiculars from it to the parting. It belongs to the band when it stands on the right side
 * of one of them, no farther than the depth there, within the hairline, and not beyond the parting itself.
 */
export type OracleBand = {
  /** The parting, finely cut; the mesh takes it as it is. */
  line: readonly SurfacePoint[]
  /** 1 for the hair on its left seen from outside, -1 for its right. */
  side: 1 | -1
  depthMm: { start: number; end: number }
}

/** Where a perpendicular stands on the parting, and the way from it to the asked place, mm, negative on the wrong side. */
type Foot = { share: number; signedMm: number; pastEndMm: number }

/** Visits every cell of the mesh that the band covers: its middle, its area in mm2 and the share of it covered. */
export function visitBand(
  head: Head,
  band: OracleBand,
  cellMm: number,
  visit: (at: SurfacePoint, point: Vec3, mm2: number) => void,
) {
  const line = tangentLine(head.surface, band.line)
  const reach = Math.max(band.depthMm.start, band.depthMm.end) + 2
  const step = cellMm / 85
  const margin = (reach / 85) * 1.5
  const [us, vs] = [band.line.map(([u]) => u), band.line.map(([, v]) => v)]
  const [fromU, toU] = [Math.min(...us) - margin, Math.max(...us) + margin]
  const [fromV, toV] = [Math.min(...vs) - margin, Math.max(...vs) + margin]
  for (let u = fromU + step / 2; u < toU; u += step)
    for (let v = fromV + step / 2; v < toV; v += step) {
      const at = surfacePoint(u, v)
      const point = head.surface.pointAt(at)
      if (!isNear(line, point, reach)) continue
      const element = areaElement(head.surface, at)
      const blurMm = Math.sqrt(element) * step
      const share = shareOf(head.surface, line, band, point, blurMm)
      if (share === 0) continue
      const inside = shareInHair(head, u, v, step)
      if (inside > 0) visit(at, point, share * inside * element * step * step)
    }
}

/** The area of what a band covers, cm2. */
export function bandOracleCm2(head: Head, band: OracleBand, cellMm = 0.25): number {
  let mm2 = 0
  visitBand(head, band, cellMm, (_, __, cell) => {
    mm2 += cell
  })
  return mm2 / 100
}

type Line = { points: Vec3[]; tangents: Vec3[]; normals: Vec3[]; runMm: number[] }

function tangentLine(surface: Surface, path: readonly SurfacePoint[]): Line {
  const points = path.map((at): Vec3 => surface.pointAt(at))
  const last = points.length - 1
  const tangents = points.map((_, i) =>
    i === 0
      ? endTangent(points[0], points[1], points[2])
      : i === last
        ? scale(endTangent(points[last], points[last - 1], points[last - 2]), -1)
        : normalize(subtract(points[i + 1], points[i - 1])),
  )
  const normals = path.map((at) => normalize(cross(...surface.tangentsAt(at))))
  const runMm = [0]
  for (let i = 1; i < points.length; i++) runMm.push(runMm[i - 1] + distance(points[i - 1], points[i]))
  return { points, tangents, normals, runMm }
}

/** The way a line sets out from its end, by the parabola through three points at even steps. */
const endTangent = (end: Vec3, next: Vec3, third: Vec3): Vec3 =>
  normalize(subtract(scale(subtract(next, end), 4), subtract(third, end)))

const isNear = ({ points }: Line, point: Vec3, reachMm: number) => {
  for (let i = 0; i < points.length; i += 4) if (distance(points[i], point) < reachMm + 4) return true
  return distance(points[points.length - 1], point) < reachMm + 4
}

/** The share of a cell that a band covers, its edges blurred over the cell's width. */
function shareOf(surface: Surface, line: Line, { side, depthMm }: OracleBand, point: Vec3, blurMm: number) {
  const ramp = (mm: number) => Math.max(0, Math.min(1, 0.5 + mm / blurMm))
  const feet = feetOf(surface, line, point, side)
  let most = 0
  for (const { share, signedMm, pastEndMm } of feet) {
    const deepMm = depthMm.start + (depthMm.end - depthMm.start) * share
    const covered = ramp(signedMm) * ramp(deepMm - signedMm) * ramp(-pastEndMm)
    const isBehind = feet.some((other) => other.signedMm < -blurMm && -other.signedMm < signedMm - blurMm)
    if (!isBehind) most = Math.max(most, covered)
  }
  return most
}

/** All places where the way from the point to the line is shortest round about, and the ends where it is a hair past them. */
function feetOf(surface: Surface, line: Line, point: Vec3, side: number): Foot[] {
  const { points, tangents, runMm } = line
  const last = points.length - 1
  const ahead = (i: number) => dot(subtract(point, points[i]), tangents[i])
  const feet: Foot[] = []
  const found = (i: number, t: number, pastEndMm: number) => {
    const foot = lerp(points[i], points[Math.min(last, i + 1)], t)
    const tangent = normalize(lerp(tangents[i], tangents[Math.min(last, i + 1)], t))
    const left = dot(cross(line.normals[i], tangent), subtract(point, foot))
    const mm = arcMm(surface, foot, point)
    const along = runMm[i] + t * ((runMm[i + 1] ?? runMm[i]) - runMm[i])
    feet.push({ share: along / runMm[last], signedMm: Math.sign(left) * side * mm, pastEndMm })
  }
  if (ahead(0) < 0 && ahead(0) > -1) found(0, 0, -ahead(0))
  let before = ahead(0)
  for (let i = 0; i < last; i++) {
    const after = ahead(i + 1)
    if (before >= 0 && after < 0) {
      const t = before / (before - after)
      const along = runMm[i] + t * (runMm[i + 1] - runMm[i])
      found(i, t, -Math.min(along, runMm[last] - along))
    }
    before = after
  }
  if (before >= 0 && before < 1) found(last, 0, before)
  return feet
}

/** The way over the surface in the plane through its centre, mm: chords of two and four pieces, and Richardson's limit of them. */
function arcMm(surface: Surface, from: Vec3, to: Vec3): number {
  const whole = distance(from, to)
  if (whole < 0.5) return whole
  const chords = (pieces: number) => {
    let [sum, before] = [0, from]
    for (let i = 1; i <= pieces; i++) {
      const next = i === pieces ? to : surface.pointAt(surface.toSurface(lerp(from, to, i / pieces)))
      sum += distance(before, next)
      before = next
    }
    return sum
  }
  const [two, four] = [chords(2), chords(4)]
  return four + (four - two) / 3
}

const fine = 8

function shareInHair({ hairline }: Head, u: number, v: number, step: number): number {
  const corners = [-0.5, 0.5].flatMap((du) =>
    [-0.5, 0.5].map((dv) => hairline.contains(surfacePoint(u + du * step, v + dv * step))),
  )
  if (corners.every(Boolean)) return 1
  if (!corners.some(Boolean)) return 0
  let inside = 0
  for (let i = 0; i < fine; i++)
    for (let j = 0; j < fine; j++)
      if (
        hairline.contains(
          surfacePoint(u + ((i + 0.5) / fine - 0.5) * step, v + ((j + 0.5) / fine - 0.5) * step),
        )
      )
        inside++
  return inside / (fine * fine)
}

/** The mean of a quantity over a band, weighed by area, and its integral over cm2. */
export function bandIntegral(head: Head, band: OracleBand, cellMm: number, of: (point: Vec3) => number) {
  let [sum, mm2] = [0, 0]
  visitBand(head, band, cellMm, (_, point, cell) => {
    sum += of(point) * cell
    mm2 += cell
  })
  return { integral: sum / 100, areaCm2: mm2 / 100 }
}
