import type { Head } from "../scalp/head"
import { between } from "../surface/surfacePath"
import { type BandShape, bandShape } from "./bandShape"
import { type BandSpans, bandSpans, covers } from "./bandSpans"
import type { Section } from "./section"
import { heldShare } from "./sectionKinds"

/** What is left of a band for each of its cells: the share of its scalp that no one parted before, and of its hair that no one took. */
export type Left = { scalp: Float64Array; hair: Float64Array }

/**
 * Places looked at across each cell. From column to column they shift by the golden section, so that no edge of another
 * band falls between them all along.
 */
const looks = 5
const shift = (Math.sqrt(5) - 1) / 2

/**
 * What the sections before it leave for a section. Where they cover its band each has taken its own share of the hair
 * that was still there, so that no hair is taken twice and a second weave finds what the first passed over.
 */
export function remainingHair(section: Section, before: readonly Section[], head: Head): Left {
  const shape = bandShape(section, head)
  // Those who take all come first: behind them there is nothing to look for.
  const takers = before.map((each) => takerOf(each, head)).sort((a, b) => a.passed - b.passed)
  const map = mapOf(shape, head)
  const { layers } = shape
  const cells = (shape.stations - 1) * (layers - 1)
  const left = { scalp: new Float64Array(cells), hair: new Float64Array(cells) }
  for (let cell = 0; cell < cells; cell++) {
    const corner = Math.floor(cell / (layers - 1)) * layers + (cell % (layers - 1))
    const near = between(map[corner], map[corner + layers], 0.5)
    const far = between(map[corner + 1], map[corner + layers + 1], 0.5)
    const offset = (cell * shift) % 1
    for (let i = 0; i < looks; i++) {
      const across = (i + offset) / looks
      const [u, v] = [near[0] + (far[0] - near[0]) * across, near[1] + (far[1] - near[1]) * across]
      look(u, v, takers, left, cell)
    }
  }
  return left
}

type Taker = { spans: BandSpans; passed: number }

const takerOf = (section: Section, head: Head): Taker => ({
  spans: bandSpans(section, head),
  passed: 1 - heldShare(section, bandShape(section, head).depthMm),
})

function look(u: number, v: number, takers: readonly Taker[], left: Left, cell: number) {
  let isFree = true
  let hair = 1
  for (const { spans, passed } of takers) {
    if (!covers(spans, u, v)) continue
    isFree = false
    hair *= passed
    if (hair === 0) break
  }
  if (isFree) left.scalp[cell] += 1 / looks
  left.hair[cell] += hair / looks
}

const mapOf = ({ points }: BandShape, { surface }: Head) =>
  Array.from({ length: points.length / 3 }, (_, i) =>
    surface.toSurface([points[3 * i], points[3 * i + 1], points[3 * i + 2]]),
  )
