import type { Head } from "../scalp/head"
import type { SurfacePoint } from "../surface/frames"
import { between } from "../surface/surfacePath"
import type { BandShape } from "./bandGrid"
import { bandShape } from "./bandShape"
import { type BandSpans, bandSpans, covers, crossingsAlong } from "./bandSpans"
import { cornerOf } from "./cellAreas"
import { pickedShape, stitchedShare } from "./pickedUp"
import type { Section } from "./section"
import { dipMm, heldShare } from "./sectionKinds"

/**
 * What is left for a section: of the scalp of each cell of its band the share that no one parted before, and of the
 * hair of each cell that its pick-ups reach into the share that no one took.
 */
export type Left = { scalp: Float64Array; hair: Float64Array }

/**
 * What the sections before it leave for a section. Where they cover its band each has taken its own share of the hair
 * that was still there, so that no hair is taken twice and a second weave finds what the first passed over.
 */
export function remainingHair(section: Section, before: readonly Section[], head: Head): Left {
  const [whole, picked] = [bandShape(section, head), pickedShape(section, head)]
  const parted = before.map((each): Taker => ({ spans: bandSpans(each, head), passed: 0 }))
  const takers = before.map((each) => takerOf(each, head))
  const scalp = leftOfCells(whole, parted, head)
  const isSame =
    whole === picked && takers.every(({ spans, passed }, i) => passed === 0 && spans === parted[i].spans)
  return { scalp, hair: isSame ? scalp : leftOfCells(picked, takers, head) }
}

/** What a section covers, and the share of the hair there that it passes over. */
type Taker = { spans: BandSpans; passed: number }

function takerOf(section: Section, head: Head): Taker {
  const { alongMm, stations } = bandShape(section, head)
  return {
    spans: bandSpans(section, head, dipMm(section)),
    passed: 1 - heldShare(section) * stitchedShare(section, alongMm[stations - 1]),
  }
}

/** Of each cell the share that is left, along the line down its middle: exact across the band, and in steps along it. */
function leftOfCells(shape: BandShape, takers: readonly Taker[], { surface }: Head): Float64Array {
  const { points, layers } = shape
  const map = Array.from({ length: points.length / 3 }, (_, i) =>
    surface.toSurface([points[3 * i], points[3 * i + 1], points[3 * i + 2]]),
  )
  return shape.areasCm2.map((_, cell) => {
    const corner = cornerOf(cell, layers)
    const near = between(map[corner], map[corner + layers], 0.5)
    const far = between(map[corner + 1], map[corner + layers + 1], 0.5)
    return leftAlong(near, far, takers)
  })
}

/**
 * The mean of what is left along a short line of the map. Between two places where an outline is crossed the middle
 * says who covers it: two bands may share an edge, on which no answer could be given.
 */
function leftAlong(from: SurfacePoint, to: SurfacePoint, takers: readonly Taker[]): number {
  const ends = takers.flatMap(({ spans }) => crossingsAlong(spans, from, to))
  if (ends.length === 0) return leftAt(between(from, to, 0.5), takers)
  ends.push(1)
  ends.sort((a, b) => a - b)
  let [left, before] = [0, 0]
  for (const end of ends) {
    if (end > before) left += (end - before) * leftAt(between(from, to, (before + end) / 2), takers)
    before = end
  }
  return left
}

function leftAt([u, v]: SurfacePoint, takers: readonly Taker[]): number {
  let left = 1
  for (const { spans, passed } of takers) if (covers(spans, u, v)) left *= passed
  return left
}
