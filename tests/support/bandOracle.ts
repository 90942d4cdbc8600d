import { frontSide } from "../../geometry/scalp/frontSide"
import type { Head } from "../../geometry/scalp/head"
import type { Band } from "../../geometry/section/section"
import { type SurfacePoint, surfacePoint } from "../../geometry/surface/frames"
import { smoothLine } from "../../geometry/surface/spline"
import { heightAbove, normalAt, type Surface } from "../../geometry/surface/surface"
import { areaElement } from "../../geometry/surface/surfacePatch"
import { measurePath, resampleMeasured } from "../../geometry/surface/surfacePath"
import {
  add,
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

/** The line is cut into pieces finer than the steps along it, so that each step has a slope of its own. */
const piecesEach = 64

/** A band as the mesh is asked for it, as deep as it is or as its stitches dip. */
export function oracleBand(head: Head, band: Band, depthMm = band.depthMm): OracleBand {
  const line = measurePath(head.surface, smoothLine(band.parting, piecesEach))
  const side = (band.taken === "front" ? 1 : -1) * frontSide(band.parting, head) === 1 ? 1 : -1
  const cut = resampleMeasured(line, Math.ceil(line.lengthMm / 0.5) + 1)
  return { line: cut, side, depthMm }
}

/** Where a perpendicular stands on the parting, and the way from it to the asked place, mm, negative on the wrong side. */
type Foot = { share: number; signedMm: number; pastEndMm: number }

/** Visits every cell of the mesh that some of the bands cover: its middle, its area in mm2 times the share of it covered. */
export function visitBands(
  head: Head,
  bands: readonly OracleBand[],
  cellMm: number,
  visit: (at: SurfacePoint, point: Vec3, mm2: number) => void,
) {
  const asked = bands.map((band) => ({
    band,
    line: tangentLine(head.surface, band.line),
    reach: Math.max(band.depthMm.start, band.depthMm.end) + 2,
  }))
  const step = cellMm / 85
  const margin = (Math.max(...asked.map(({ reach }) => reach)) / 85) * 1.5
  const all = bands.flatMap(({ line }) => line)
  const [us, vs] = [all.map(([u]) => u), all.map(([, v]) => v)]
  const [fromU, toU] = [Math.min(...us) - margin, Math.max(...us) + margin]
  const [fromV, toV] = [Math.min(...vs) - margin, Math.max(...vs) + margin]
  for (let u = fromU + step / 2; u < toU; u += step)
    for (let v = fromV + step / 2; v < toV; v += step) {
      const at = surfacePoint(u, v)
      const point = head.surface.pointAt(at)
      const near = asked.filter(({ line, reach }) => isNear(line, point, reach))
      if (near.length === 0) continue
      const element = areaElement(head.surface, at)
      const blurMm = Math.sqrt(element) * step
      const place = { point, normal: normalAt(head.surface, at) }
      const bare = near.reduce(
        (left, { band, line }) => left * (1 - shareOf(head.surface, line, band, place, blurMm)),
        1,
      )
      if (bare === 1) continue
      const inside = shareInHair(head, u, v, step)
      if (inside > 0) visit(at, point, (1 - bare) * inside * element * step * step)
    }
}

/** The area of what a band covers, cm2. */
export const bandOracleCm2 = (head: Head, band: OracleBand, cellMm = 0.25) =>
  unionOracleCm2(head, [band], cellMm)

/** The area of what bands cover together, cm2. */
export function unionOracleCm2(head: Head, bands: readonly OracleBand[], cellMm = 0.25): number {
  let mm2 = 0
  visitBands(head, bands, cellMm, (_, __, cell) => {
    mm2 += cell
  })
  return mm2 / 100
}

type Place = { point: Vec3; normal: Vec3 }
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

function isNear({ points }: Line, [x, y, z]: Vec3, reachMm: number) {
  const square = (reachMm + 4) ** 2
  const isWithin = (i: number) =>
    (points[i][0] - x) ** 2 + (points[i][1] - y) ** 2 + (points[i][2] - z) ** 2 < square
  for (let i = 0; i < points.length; i += 4) if (isWithin(i)) return true
  return isWithin(points.length - 1)
}

/** The share of a cell that a band covers, its edges blurred over the cell's width. */
function shareOf(surface: Surface, line: Line, { side, depthMm }: OracleBand, place: Place, blurMm: number) {
  const ramp = (mm: number) => Math.max(0, Math.min(1, 0.5 + mm / blurMm))
  const feet = feetOf(surface, line, place, side, Math.max(depthMm.start, depthMm.end) + 2)
  let most = 0
  for (const { share, signedMm, pastEndMm } of feet) {
    const deepMm = depthMm.start + (depthMm.end - depthMm.start) * share
    const covered = ramp(signedMm) * ramp(deepMm - signedMm) * ramp(-pastEndMm)
    const isBehind = feet.some((other) => other.signedMm < -blurMm && -other.signedMm < signedMm - blurMm)
    if (!isBehind) most = Math.max(most, covered)
  }
  return most
}

/**
 * How far a place lies ahead of a foot, mm: along the tangent there, in the plane in which the shortest way between the
 * two sets out. It stands off the normal where it starts by a third of the way to the normal where it ends, as a geodesic
 * lies between the two normal sections (Bomford). Written out, for it is asked a hundred million times.
 */
function aheadOf([px, py, pz]: Vec3, [mx, my, mz]: Vec3, foot: Vec3, [tx, ty, tz]: Vec3, [nx, ny, nz]: Vec3) {
  const [x, y, z] = [px - foot[0], py - foot[1], pz - foot[2]]
  const [ux, uy, uz] = [2 * nx + mx, 2 * ny + my, 2 * nz + mz]
  const lifted = (x * nx + y * ny + z * nz) / (ux * nx + uy * ny + uz * nz)
  return (x - lifted * ux) * tx + (y - lifted * uy) * ty + (z - lifted * uz) * tz
}

/** All places where the way from the point to the line is shortest round about, and the ends where it is a hair past them. */
function feetOf(
  surface: Surface,
  line: Line,
  { point, normal }: Place,
  side: number,
  reachMm: number,
): Foot[] {
  const { points, tangents, normals, runMm } = line
  const last = points.length - 1
  const ahead = (i: number) => aheadOf(point, normal, points[i], tangents[i], normals[i])
  const feet: Foot[] = []
  const found = (i: number, t: number, pastEndMm: number) => {
    const foot = lerp(points[i], points[Math.min(last, i + 1)], t)
    if (distance(foot, point) > reachMm) return
    const tangent = normalize(lerp(tangents[i], tangents[Math.min(last, i + 1)], t))
    const left = dot(cross(line.normals[i], tangent), subtract(point, foot))
    const mm = arcMm(surface, foot, point, normalize(add(normals[i], normal)))
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

/** The way over the surface in the plane of two places and the way up between them, mm: chords of two and four pieces, and Richardson's limit of them. */
function arcMm(surface: Surface, from: Vec3, to: Vec3, up: Vec3): number {
  const whole = distance(from, to)
  if (whole < 0.5) return whole
  const chords = (pieces: number) => {
    let [sum, before] = [0, from]
    for (let i = 1; i <= pieces; i++) {
      const next = i === pieces ? to : lifted(surface, lerp(from, to, i / pieces), up)
      sum += distance(before, next)
      before = next
    }
    return sum
  }
  const [two, four] = [chords(2), chords(4)]
  return four + (four - two) / 3
}

/** The place of the surface straight above or below a point. */
function lifted(surface: Surface, point: Vec3, up: Vec3): Vec3 {
  let at = point
  for (let i = 0; i < 3; i++) {
    const out = normalize(subtract(at, surface.centre))
    at = subtract(at, scale(up, heightAbove(surface, at) / dot(up, out)))
  }
  return at
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
  visitBands(head, [band], cellMm, (_, point, cell) => {
    sum += of(point) * cell
    mm2 += cell
  })
  return { integral: sum / 100, areaCm2: mm2 / 100 }
}
