import { bandCells, type HairOnHead } from "./bandCells"
import type { BandShape } from "./bandShape"
import { coatedCm } from "./coating"
import type { Left } from "./remainingHair"

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

/** Sum a band cell by cell, with density and length taken at each cell's middle; of what is left of it, where less is. */
export function sumBand(shape: BandShape, on: HairOnHead, left?: Left): BandSums {
  const sums = { areaCm2: 0, hairs: 0, hairCm: 0, coatedHairCm: 0, coatedWidthCm2: 0 }
  const { areasCm2, hairs: grown, lengthsCm } = bandCells(shape, on)
  for (let station = 0, cell = 0; station < shape.stations - 1; station++) {
    const column = { grown: 0, hairs: 0, coatedHairCm: 0 }
    for (let layer = 0; layer < shape.layers - 1; layer++, cell++) {
      const hairs = left ? grown[cell] * left.hair[cell] : grown[cell]
      sums.areaCm2 += left ? areasCm2[cell] * left.scalp[cell] : areasCm2[cell]
      sums.hairCm += hairs * lengthsCm[cell]
      column.grown += grown[cell]
      column.hairs += hairs
      column.coatedHairCm += hairs * coatedCm(on.coating, lengthsCm[cell])
    }
    const widthCm = (shape.alongMm[station + 1] - shape.alongMm[station]) / 10
    sums.hairs += column.hairs
    sums.coatedHairCm += column.coatedHairCm
    if (column.grown > 0) sums.coatedWidthCm2 += (widthCm * column.coatedHairCm) / column.grown
  }
  return sums
}
