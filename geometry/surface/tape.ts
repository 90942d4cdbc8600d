import { convexHull } from "./convexHull"
import type { Pair } from "./frames"
import { heightAbove, type Surface } from "./surface"
import {
  add,
  cross,
  distance,
  dot,
  length,
  lerp,
  multiply,
  normalize,
  scale,
  subtract,
  type Vec3,
} from "./vec3"

/** Where a taut tape touches the skin in one plane's cut, mm in the head frame, from end to end or once round. */
export type Tape = { points: readonly Vec3[]; isClosed: boolean }

/** Rays in a half turn: a chord then falls short of its arc by 13 parts in a million. */
const raysInHalfTurn = 180

/** A tape from one point of the skin over a second to a third, in the plane of the three. */
export function layTape(surface: Surface, from: Vec3, over: Vec3, to: Vec3): Tape {
  const middle = lerp(from, to, 0.5)
  const spokes = { along: subtract(from, middle), across: subtract(over, middle) }
  return { points: pullTaut(cutHalf(surface, middle, spokes)), isClosed: false }
}

/** A tape round the head through a front and a back point of the midline, level from side to side. */
export function layTapeAround(surface: Surface, front: Vec3, back: Vec3, halfBreadthMm: number): Tape {
  const middle = lerp(front, back, 0.5)
  const spokes = { along: subtract(front, middle), across: [halfBreadthMm, 0, 0] as const }
  const right = cutHalf(surface, middle, spokes)
  const left = right.slice(1, -1).map(([x, y, z]): Vec3 => [-x, y, z])
  return { points: pullTaut([...right, ...left.reverse()]), isClosed: true }
}

/**
 * Length of a taut tape, mm. `axes` stretch it on x, y, z first: as a stretched hull is the hull of what was
 * stretched, the tape of a scaled head is the scaled tape.
 */
export function tautMm({ points, isClosed }: Tape, axes: Vec3 = [1, 1, 1]): number {
  const places = points.map((point) => multiply(point, axes))
  const steps = places.slice(1).map((place, i) => distance(places[i], place))
  const closing = isClosed ? distance(places[places.length - 1], places[0]) : 0
  return steps.reduce((sum, step) => sum + step, closing)
}

/** How the length of a taut tape grows with each of the factors on x, y and z, mm. */
export function tautSlopes({ points, isClosed }: Tape, axes: Vec3): Vec3 {
  let slopes: Vec3 = [0, 0, 0]
  for (let i = isClosed ? 0 : 1; i < points.length; i++) {
    const step = subtract(points[i], points[i === 0 ? points.length - 1 : i - 1])
    slopes = add(slopes, scale(multiply(multiply(step, step), axes), 1 / length(multiply(step, axes))))
  }
  return slopes
}

/** What a cut of one plane leaves when hollows are bridged: its points on the convex hull, in order. */
export function pullTaut(cut: readonly Vec3[]): Vec3[] {
  const flat = inTheirPlane(cut)
  const touched = new Set(convexHull(flat))
  return cut.filter((_, i) => touched.has(flat[i]))
}

type Spokes = { along: Vec3; across: Vec3 }

/** The skin from the direction of `along`, through that of `across`, to the one opposite `along`. */
function cutHalf(surface: Surface, middle: Vec3, { along, across }: Spokes): Vec3[] {
  const points: Vec3[] = []
  let reach = 1
  for (let i = 0; i <= raysInHalfTurn; i++) {
    const angle = (Math.PI * i) / raysInHalfTurn
    const spoke = add(scale(along, Math.cos(angle)), scale(across, Math.sin(angle)))
    reach = reachOfSkin(surface, middle, spoke, reach)
    points.push(add(middle, scale(spoke, reach)))
  }
  return points
}

/** How many spokes long the way from a point inside to the skin is (secant steps). */
function reachOfSkin(surface: Surface, middle: Vec3, spoke: Vec3, start: number): number {
  const heightAt = (t: number) => heightAbove(surface, add(middle, scale(spoke, t)))
  let [before, reach] = [start * 0.98, start]
  let [low, height] = [heightAt(before), heightAt(reach)]
  for (let i = 0; i < 20 && Math.abs(height) > 1e-9 && height !== low; i++) {
    const next = reach - (height * (reach - before)) / (height - low)
    ;[before, low] = [reach, height]
    reach = Math.min(1.3 * before, Math.max(0.7 * before, next))
    height = heightAt(reach)
  }
  return reach
}

/** Points of one plane in two coordinates of that plane, mm. */
function inTheirPlane(points: readonly Vec3[]): Pair[] {
  const third = Math.floor(points.length / 3)
  const origin = points[0]
  const along = normalize(subtract(points[third], origin))
  const normal = normalize(cross(along, subtract(points[2 * third], origin)))
  const across = cross(normal, along)
  return points.map((point) => {
    const from = subtract(point, origin)
    return [dot(from, along), dot(from, across)]
  })
}
