import { frontSide } from "../../../geometry/scalp/frontSide"
import type { Head } from "../../../geometry/scalp/head"
import { nearestOnPath } from "../../../geometry/surface/nearestOnPath"
import { normalAt, type Surface } from "../../../geometry/surface/surface"
import { type MeasuredPath, measurePath, pointAlong } from "../../../geometry/surface/surfacePath"
import { cross, dot, normalize, subtract, type Vec3 } from "../../../geometry/surface/vec3"
import { middle, type Traced } from "./traced"

/** How a parting lies beside another, mm: moved over square to it, away from the face where positive, and slid along it. */
export type Beside = { backMm: number; alongMm: number }

/** A learner's parting told by the model's: the mean way over of its places, and how far its middle slid. */
export function besideOf(model: Traced, learner: Traced, head: Head): Beside {
  const path = measurePath(head.surface, model.section.parting)
  const nearest = nearestOnPath(head.surface, path)
  const ways = learner.places.map((place) => wayFrom(place, nearest(place).alongMm, path, head.surface))
  // Past an end the line is not there to be square to.
  const within = ways.filter(({ isWithin }) => isWithin)
  const told = within.length > 0 ? within : ways
  const leftMm = told.reduce((sum, each) => sum + each.leftMm, 0) / told.length
  return {
    backMm: -frontSide(model.section.parting, head) * leftMm,
    alongMm: ways[middle].alongMm - path.lengthMm / 2,
  }
}

const nudgeMm = 1.5
const endMm = 0.01

/** The way from a parting to a place: how far to its left, seen from outside, and how far along it, past its ends too. */
function wayFrom(place: Vec3, footMm: number, path: MeasuredPath, surface: Surface) {
  const at = pointAlong(path, footMm)
  const [before, after] = [-nudgeMm, nudgeMm].map((mm) => surface.pointAt(pointAlong(path, footMm + mm)))
  const ahead = normalize(subtract(after, before))
  const way = subtract(place, surface.pointAt(at))
  const isWithin = footMm > endMm && footMm < path.lengthMm - endMm
  return {
    isWithin,
    leftMm: dot(way, cross(normalAt(surface, at), ahead)),
    alongMm: footMm + (isWithin ? 0 : dot(way, ahead)),
  }
}
