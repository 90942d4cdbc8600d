import { densityAt, type Hair, lengthCmAt } from "../hair/hair"
import type { TradeFigures } from "../hair/tradeFigures"
import type { Head } from "../scalp/head"
import type { BandShape } from "./bandShape"
import { cellAreasCm2, cellMiddle } from "./cellAreas"
import type { Coating } from "./coating"

export type HairOnHead = { head: Head; hair: Hair; figures: TradeFigures; coating: Coating }

/** Of each cell of a band: its scalp, the hairs that grow on it, and how long they are at its middle. */
export type BandCells = { areasCm2: Float64Array; hairs: Float64Array; lengthsCm: Float64Array }

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
  const areasCm2 = cellAreasCm2(shape)
  const cells = { areasCm2, hairs: areasCm2.slice(), lengthsCm: areasCm2.slice() }
  const across = shape.layers - 1
  areasCm2.forEach((area, cell) => {
    if (area === 0) return
    const middle = cellMiddle(shape, Math.floor(cell / across) * shape.layers + (cell % across))
    cells.hairs[cell] = area * densityAt(head, hair, figures, middle)
    cells.lengthsCm[cell] = lengthCmAt(head, hair, figures, middle)
  })
  return cells
}
