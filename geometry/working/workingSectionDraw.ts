import { type AlongHairline, hairlineParting, type Parted, straightParting } from "../parting/parting"
import type { Head } from "../scalp/head"
import { crossing } from "../scalp/longestRunInside"
import type { SurfacePoint } from "../surface/frames"
import { between, type SurfacePath } from "../surface/surfacePath"
import { add, cross, dot, normalize, scale, subtract } from "../surface/vec3"
import { crossings } from "./workingSectionNet"

/** Steps round the head's centre, radians: about 2.5 mm; and the longest way past either end of a stroke, in steps. */
const step = 0.03
const mostSteps = 90
/** A stroke that ends so near an edge means the edge, in steps: about a finger's width. */
const snapSteps = 8
/** Points of a parting stand this many steps apart. */
const spacing = 2

/**
 * The dividing parting a comb draws straight through two places: it ends on the edge (the hairline, or another dividing
 * parting) that each end of the stroke comes near, or runs on to the next.
 */
export function straightDivider(
  head: Head,
  others: readonly SurfacePath[],
  from: SurfacePoint,
  to: SurfacePoint,
): Parted {
  const { line, start, end } = wayRound(head, from, to)
  const middle = (start + end) >> 1
  if (!head.hairline.contains(line[middle])) return { refused: "outside-hairline" }
  const [first, last] = [-1, 1].map((way) => lastInside(head, line, middle, way))
  const edges = [
    first,
    last,
    ...others.flatMap((other) => crossings(line, other).map(({ onFirst }) => onFirst)),
  ]
  const fromAt = Math.max(...edges.filter((at) => at <= start), first)
  const toAt = Math.min(...edges.filter((at) => at >= end), last)
  const cutFrom = nearEdge(edges, start, fromAt, (at) => at < middle)
  const cutTo = nearEdge(edges, end, toAt, (at) => at > middle)
  return cutTo - cutFrom < 2 ? { refused: "too-short" } : { parting: stretchOf(line, cutFrom, cutTo) }
}

/** The edge that an end of a stroke means: one within reach on either side, else the next outward. */
function nearEdge(edges: readonly number[], end: number, outward: number, isOwn: (at: number) => boolean) {
  const near = edges.filter((at) => isOwn(at) && Math.abs(at - end) <= snapSteps)
  return near.length > 0 ? near.reduce((a, b) => (Math.abs(b - end) < Math.abs(a - end) ? b : a)) : outward
}

/** The great way through two places round the head's centre, a place a step, and where on it the two are. */
function wayRound({ surface }: Head, from: SurfacePoint, to: SurfacePoint) {
  const { centre } = surface
  const [a, b] = [from, to].map((at) => normalize(subtract(surface.pointAt(at), centre)))
  const square = normalize(cross(cross(a, b), a))
  const strokeSteps = Math.max(1, Math.round(Math.atan2(dot(square, b), dot(a, b)) / step))
  const line = Array.from({ length: 2 * mostSteps + strokeSteps + 1 }, (_, i) => {
    const angle = (i - mostSteps) * step
    return surface.toSurface(
      add(centre, add(scale(a, 100 * Math.cos(angle)), scale(square, 100 * Math.sin(angle)))),
    )
  })
  return { line, start: mostSteps, end: mostSteps + strokeSteps }
}

/** How far along a line the hair ends, going one way from a place inside. */
function lastInside({ hairline }: Head, line: SurfacePath, from: number, way: number): number {
  let at = from
  while (line[at + way] && hairline.contains(line[at + way])) at += way
  const outside = line[at + way]
  if (!outside) return at
  const edge = crossing(hairline, line[at], outside)
  const whole = Math.hypot(outside[0] - line[at][0], outside[1] - line[at][1])
  return at + (way * Math.hypot(edge[0] - line[at][0], edge[1] - line[at][1])) / whole
}

function stretchOf(line: SurfacePath, from: number, to: number): SurfacePath {
  const count = Math.max(2, Math.ceil((to - from) / spacing) + 1)
  return Array.from({ length: count }, (_, i) => {
    const at = from + ((to - from) * i) / (count - 1)
    const before = Math.min(Math.floor(at), line.length - 2)
    return between(line[before], line[before + 1], at - before)
  })
}

/** The dividing parting that keeps its distance from the hairline and drops to it at both ends. */
export function hairlineDivider(head: Head, along: AlongHairline): Parted {
  const kept = hairlineParting(head, along)
  if ("refused" in kept) return kept
  const { parting } = kept
  const ends = [
    straightParting(head, head.hairline.pointAlong(along.fromAlongMm), parting[0]),
    straightParting(head, parting[parting.length - 1], head.hairline.pointAlong(along.toAlongMm)),
  ].map((leg) => ("parting" in leg ? leg.parting : []))
  return { parting: [...ends[0].slice(0, -1), ...parting, ...ends[1].slice(1)] }
}
