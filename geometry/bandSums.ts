import { type Coating, coatedCm } from "./coating"
import { densityAt, type Hair, lengthCmAt } from "./hair"
import type { Head } from "./head/head"
import type { BandShape } from "./section/bandShape"
import { cellAreasCm2, cellMiddle } from "./section/cellAreas"
import type { TradeFigures } from "./tradeFigures"

/** Sums over all the hair of a band, taken or not. */
export type BandSums = {
  areaCm2: number
  hairs: number
  /** Hairs x length, and hairs x coated length, cm. */
  hairCm: number
  coatedHairCm: number
  /** Width of the band x coated length, cm2. */
  coatedWidthCm2: number
}

export type HairOnHead = { head: Head; hair: Hair; figures: TradeFigures; coating: Coating }

/** Sum a band cell by cell, with density and length taken at each cell's middle. */
export function sumBand(shape: BandShape, on: HairOnHead): BandSums {
  const sums = { areaCm2: 0, hairs: 0, hairCm: 0, coatedHairCm: 0, coatedWidthCm2: 0 }
  const areas = cellAreasCm2(shape)
  for (let station = 0, cell = 0; station < shape.stations - 1; station++) {
    const column = { hairs: 0, coatedHairCm: 0 }
    for (let layer = 0; layer < shape.layers - 1; layer++, cell++) {
      if (areas[cell] === 0) continue
      const middle = cellMiddle(shape, station * shape.layers + layer)
      const hairs = areas[cell] * densityAt(on.head, on.hair, on.figures, middle)
      const lengthCm = lengthCmAt(on.head, on.hair, on.figures, middle)
      sums.areaCm2 += areas[cell]
      sums.hairCm += hairs * lengthCm
      column.hairs += hairs
      column.coatedHairCm += hairs * coatedCm(on.coating, lengthCm)
    }
    const widthCm = (shape.alongMm[station + 1] - shape.alongMm[station]) / 10
    sums.hairs += column.hairs
    sums.coatedHairCm += column.coatedHairCm
    if (column.hairs > 0) sums.coatedWidthCm2 += (widthCm * column.coatedHairCm) / column.hairs
  }
  return sums
}
