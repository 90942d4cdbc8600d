import type { Head } from "../scalp/head"
import type { BandShape } from "./bandGrid"
import { bandShape } from "./bandShape"
import { bandSpans } from "./bandSpans"
import { bandTiles, clear, cut, hasOfCells, tilesUnder } from "./bandTiles"
import { type CellSquares, cellSquares, numbersEach } from "./cellSquares"
import { leftInCell, type Taker, takeAll } from "./leftInCell"
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
  const takes = before.map((each) => takesOf(each, head))
  const left = leftOfCells(
    picked,
    takes.map(({ hair }) => hair),
  )
  if (whole === picked && takes.every(({ hair, scalp }) => hair.spans === scalp.spans)) return left
  const parted = leftOfCells(
    whole,
    takes.map(({ scalp }) => scalp),
  )
  return { scalp: parted.scalp, hair: left.hair }
}

/** What a section takes from those after it on a head: hair as far as its pick-ups reach, and scalp all over its band. */
type Takes = { head: Head; hair: Taker; scalp: Taker }

const remembered = new WeakMap<Section, Takes>()

/** What a section takes, remembered for the head it was last on. */
function takesOf(section: Section, head: Head): Takes {
  const known = remembered.get(section)
  if (known?.head === head) return known
  const whole = bandShape(section, head)
  const passed = 1 - heldShare(section) * stitchedShare(section, whole.alongMm[whole.stations - 1])
  const takes = {
    head,
    hair: { spans: bandSpans(section, head, dipMm(section)), passed },
    scalp: { spans: bandSpans(section, head), passed: 0 },
  }
  remembered.set(section, takes)
  return takes
}

/** Of each cell the share that is left: exact within the cells that an outline runs through, the same all through the others. */
function leftOfCells(shape: BandShape, takers: readonly Taker[]): Left {
  const { areasCm2 } = shape
  const count = areasCm2.length
  const squares = cellSquares(shape)
  const has = hasOf(squares, count, takers)
  const left: Left = { scalp: new Float64Array(count), hair: new Float64Array(count) }
  const near: Taker[] = []
  const ofCell = { scalp: 1, hair: 1 }
  // Who left nothing of one cell is asked first about the next.
  const order = takers.map((_, i) => i)
  for (let cell = 0, square = 0; cell < count; cell++, square += numbersEach) {
    if (areasCm2[cell] === 0) continue
    ofCell.scalp = 1
    ofCell.hair = 1
    let many = 0
    for (let place = 0; place < order.length; place++) {
      const taker = order[place]
      const of = has[taker * count + cell]
      if (of === clear) continue
      if (of === cut) near[many++] = takers[taker]
      else takeAll(ofCell, takers[taker])
      if (ofCell.hair > 0) continue
      putFirst(order, place)
      break
    }
    if (ofCell.hair > 0 && many > 0) {
      const greedy = leftInCell(squares, square, near, many, ofCell)
      if (greedy > 0) putFirst(order, order.indexOf(takers.indexOf(near[greedy])))
    }
    left.scalp[cell] = ofCell.scalp
    left.hair[cell] = ofCell.hair
  }
  return left
}

/** What each taker has of each cell, taker by taker. */
function hasOf(squares: CellSquares, count: number, takers: readonly Taker[]): Uint8Array {
  const under = tilesUnder(squares)
  const has = new Uint8Array(takers.length * count)
  for (let i = 0; i < takers.length; i++) hasOfCells(bandTiles(takers[i].spans), under, has, i * count)
  return has
}

function putFirst(order: number[], place: number) {
  const first = order[place]
  for (let i = place; i > 0; i--) order[i] = order[i - 1]
  order[0] = first
}
