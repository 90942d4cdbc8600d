import { bearingOf, type DirectionName, followsHairline, plainDirection } from "../parting/direction"
import { cleanParting, hairlineParting, straightParting } from "../parting/parting"
import type { Head } from "../scalp/head"
import { extendPath } from "../surface/extendPath"
import type { SurfacePoint } from "../surface/frames"
import type { Surface } from "../surface/surface"
import { lengthMm, pointAlong, type SurfacePath } from "../surface/surfacePath"
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from "../surface/vec3"
import type { SnapGuide } from "./snapGuides"

/** What a stroke was drawn to: the parting it becomes, its name, and the line to show for it. */
export type Snapped = {
  parting: SurfacePath
  to: DirectionName | "last parting"
  guide: SurfacePath
}

/** What a stroke can snap to: the head, the lines beside the last parting, the least room in front of a parting, mm. */
export type SnapWorld = { head: Head; guides: readonly SnapGuide[]; leastBehindMm: number }

/** A hand means a line that it keeps within these: mm to the side, degrees of turn. */
const besideMm = 4
const turnDegrees = 7
/** Shorter strokes have no direction yet, mm. */
const shortestMm = 12

/** The line that a stroke was meant to be, or null when it is its own. Points from the first to the last, mm and degrees on the scalp. */
export function snapStroke(stroke: SurfacePath, world: SnapWorld): Snapped | null {
  const [from, to] = [stroke[0], stroke[stroke.length - 1]]
  const { surface } = world.head
  const straight = straightParting(world.head, from, to)
  if ("refused" in straight || lengthMm(surface, straight.parting) < shortestMm) return null
  const few = spread(stroke, 9)
  return (
    alongGuide(few, world) ??
    alongHairline(few, straight.parting, world) ??
    (bowMm(surface, few) <= Math.max(3, 0.05 * lengthMm(surface, straight.parting))
      ? alongDirection(from, to, world)
      : null)
  )
}

function spread(stroke: SurfacePath, most: number): SurfacePath {
  const step = Math.max(1, (stroke.length - 1) / (most - 1))
  const count = Math.min(most, stroke.length)
  return Array.from({ length: count }, (_, i) => stroke[Math.round(i * step)])
}

function alongGuide(few: SurfacePath, { head, guides }: SnapWorld): Snapped | null {
  for (const { line, nearest, shown } of guides) {
    const places = few.map((at) => nearest(head.surface.pointAt(at)))
    if (places.some(({ chordMm }) => chordMm > besideMm)) continue
    const [fromMm, toMm] = [places[0].alongMm, places[places.length - 1].alongMm]
    const steps = Math.max(2, Math.ceil(Math.abs(toMm - fromMm) / 3))
    const run = Array.from({ length: steps + 1 }, (_, i) =>
      pointAlong(line, fromMm + ((toMm - fromMm) * i) / steps),
    )
    const made = cleanParting(head, run)
    if ("parting" in made) return { ...made, to: "last parting", guide: shown }
  }
  return null
}

function alongHairline(few: SurfacePath, straight: SurfacePath, world: SnapWorld): Snapped | null {
  const { surface, hairline } = world.head
  const places = few.map(hairline.coordinates)
  const behind = places.map(({ behindMm }) => behindMm)
  if (Math.max(...behind) - Math.min(...behind) > besideMm) return null
  if (few.length < 5 && !followsHairline(straight, surface, hairline)) return null
  const [fromAlongMm, toAlongMm] = [places[0].alongMm, places[places.length - 1].alongMm]
  const behindMm = Math.max(Math.round(behind[0]), world.leastBehindMm)
  const made = hairlineParting(world.head, { fromAlongMm, toAlongMm, behindMm })
  if ("refused" in made || !followsHairline(made.parting, surface, hairline)) return null
  return { ...made, to: "parallel to hairline", guide: extendPath(surface, made.parting, reachMm, reachMm) }
}

/** A line to show reaches this far past what is drawn, mm. */
const reachMm = 30
const bearings = [0, 45, 90, 135]

function alongDirection(from: SurfacePoint, to: SurfacePoint, { head }: SnapWorld): Snapped | null {
  for (const bearing of bearings) {
    const end = turnedToward(head.surface, from, to, bearing)
    const made = end && straightParting(head, from, end)
    if (!made || "refused" in made) continue
    const { name } = plainDirection(head.surface, from, end)
    return { ...made, to: name, guide: extendPath(head.surface, made.parting, reachMm, reachMm) }
  }
  return null
}

/** The place as far from `from` as `to` is, where the line between runs at a bearing; null when that is too far a turn. */
export function turnedToward(
  surface: Surface,
  from: SurfacePoint,
  to: SurfacePoint,
  bearing: number,
  mostDegrees = turnDegrees,
): SurfacePoint | null {
  const turn = turnAbout(surface, from)
  let byDegrees = 0
  let end = to
  for (let i = 0; i < 8; i++) {
    const off = degreesBetween(bearingOf(surface, from, end), bearing)
    if (Math.abs(off) < 0.05) return end
    byDegrees += off
    if (Math.abs(byDegrees) > mostDegrees) return null
    end = turn(to, byDegrees)
  }
  return null
}

/** From one bearing to another the shorter way, degrees from -90 to 90. */
export const degreesBetween = (from: number, to: number) => ((((to - from + 90) % 180) + 180) % 180) - 90

/** Turns places about the way from the head's centre to one of them; anticlockwise seen from outside, degrees. */
export function turnAbout(surface: Surface, about: SurfacePoint) {
  const axis = normalize(subtract(surface.pointAt(about), surface.centre))
  return (at: SurfacePoint, degrees: number): SurfacePoint => {
    const arm = subtract(surface.pointAt(at), surface.centre)
    return surface.toSurface(add(surface.centre, rotated(arm, axis, (degrees * Math.PI) / 180)))
  }
}

/** Rodrigues: a vector turned about a unit axis. */
const rotated = (vector: Vec3, axis: Vec3, radians: number): Vec3 =>
  add(
    add(scale(vector, Math.cos(radians)), scale(cross(axis, vector), Math.sin(radians))),
    scale(axis, dot(axis, vector) * (1 - Math.cos(radians))),
  )

/** How far a stroke bows out of the plane through its ends and the head's centre, mm. */
function bowMm({ pointAt, centre }: Surface, few: SurfacePath): number {
  const arms = few.map((at) => subtract(pointAt(at), centre))
  const plane = normalize(cross(arms[0], arms[arms.length - 1]))
  return Math.max(...arms.map((arm) => Math.abs(dot(arm, plane))))
}
