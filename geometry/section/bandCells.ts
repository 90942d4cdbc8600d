import { densityAt, type Hair, lengthCmAt, pastBandMm } from "../hair/hair"
import type { TradeFigures } from "../hair/tradeFigures"
import type { Head } from "../scalp/head"
import { distance, type Vec3 } from "../surface/vec3"
import type { BandShape } from "./bandGrid"
import { cellMiddle, cornerOf } from "./cellAreas"
import type { Coating } from "./coating"

export type HairOnHead = { head: Head; hair: Hair; figures: TradeFigures; coating: Coating }

/** Of each cell of a band: the hairs that grow on it, and how long they are at its middle. */
export type BandCells = { hairs: Float64Array; lengthsCm: Float64Array }

type On = Omit<HairOnHead, "coating">
const remembered = new WeakMap<BandShape, On & { cells: BandCells }>()

/** The cells of a band under a head of hair, remembered until either is another. */
export function bandCells(shape: BandShape, on: On): BandCells {
  const known = remembered.get(shape)
  if (known?.head === on.head && known.hair === on.hair && known.figures === on.figures) return known.cells
  const { head, hair, figures } = on
  const cells = countCells(shape, on)
  remembered.set(shape, { head, hair, figures, cells })
  return cells
}

function countCells(shape: BandShape, { head, hair, figures }: On): BandCells {
  const { areasCm2, layers } = shape
  const [hairs, lengthsCm] = [new Float64Array(areasCm2.length), new Float64Array(areasCm2.length)]
  const edgeMm = edgeFrom(head, pastBandMm(figures))
  for (let cell = 0; cell < areasCm2.length; cell++) {
    if (areasCm2[cell] === 0) continue
    const middle = cellMiddle(shape, cornerOf(cell, layers))
    hairs[cell] = areasCm2[cell] * densityAt(head, hair, figures, middle, edgeMm(middle))
    lengthsCm[cell] = lengthCmAt(head, hair, figures, middle)
  }
  return { hairs, lengthsCm }
}

/** How far places are from the hairline, mm, or that they are past so many: asked anew only where the last answer does not tell. */
function edgeFrom({ hairline }: Head, pastMm: number): (place: Vec3) => number {
  let asked: Vec3 = [0, 0, 0]
  let mm = 0
  return (place) => {
    const leastMm = mm - distance(place, asked)
    if (leastMm >= pastMm) return leastMm
    asked = place
    mm = hairline.distanceMm(place)
    return mm
  }
}
