import { type SurfacePoint, surfacePoint } from "../frames"
import type { Head } from "../head/head"
import { areaElement, contains } from "../surfacePatch"
import { bandShape } from "./bandShape"
import type { Band } from "./section"

/** A band's outline in the scalp map, and the box round it. */
type Outline = {
  ring: readonly SurfacePoint[]
  low: readonly [number, number]
  high: readonly [number, number]
}

/** Cells of the map in which hair is looked for, radians: about a millimetre. */
const cell = 0.01

/** Whether two bands come near each other at all: the boxes round them meet. */
export function isNear(a: Band, b: Band, head: Head): boolean {
  const [one, other] = [outlineOf(a, head), outlineOf(b, head)]
  const meets = (axis: 0 | 1) => one.low[axis] < other.high[axis] && other.low[axis] < one.high[axis]
  return meets(0) && meets(1)
}

/** Scalp of a head from which both bands take their hair, cm2, summed over cells of a square millimetre. */
export function overlapCm2(a: Band, b: Band, head: Head): number {
  const [one, other] = [outlineOf(a, head), outlineOf(b, head)]
  const [fromU, fromV] = [Math.max(one.low[0], other.low[0]), Math.max(one.low[1], other.low[1])]
  const [toU, toV] = [Math.min(one.high[0], other.high[0]), Math.min(one.high[1], other.high[1])]
  let mm2 = 0
  for (let u = fromU + cell / 2; u < toU; u += cell)
    for (let v = fromV + cell / 2; v < toV; v += cell) {
      const at = surfacePoint(u, v)
      if (contains(one.ring, at) && contains(other.ring, at))
        mm2 += cell * cell * areaElement(head.surface, at)
    }
  return mm2 / 100
}

const remembered = new WeakMap<Head, WeakMap<Band, Outline>>()

function outlineOf(band: Band, head: Head): Outline {
  const ofHead = remembered.get(head) ?? new WeakMap<Band, Outline>()
  remembered.set(head, ofHead)
  const known = ofHead.get(band)
  if (known) return known
  const fresh = drawOutline(band, head)
  ofHead.set(band, fresh)
  return fresh
}

function drawOutline(band: Band, head: Head): Outline {
  const { points, stations, layers } = bandShape(band, head)
  const at = (station: number, layer: number) => {
    const i = 3 * (station * layers + layer)
    return head.surface.toSurface([points[i], points[i + 1], points[i + 2]])
  }
  const edge = (layer: number) => Array.from({ length: stations }, (_, station) => at(station, layer))
  const ring = [...edge(0), ...edge(layers - 1).toReversed()]
  const [us, vs] = [ring.map(([u]) => u), ring.map(([, v]) => v)]
  return { ring, low: [Math.min(...us), Math.min(...vs)], high: [Math.max(...us), Math.max(...vs)] }
}
