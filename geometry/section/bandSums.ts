import { bandCells, type HairOnHead } from "./bandCells"
import type { BandShape } from "./bandGrid"
import { coatedFrom } from "./coating"

/** Sums over the hair of a band that lies within a section's pick-ups, coated or not. */
export type BandSums = {
  hairs: number
  /** Hairs x length, and hairs x coated length, cm. */
  hairCm: number
  coatedHairCm: number
  /** Width picked up x coated length, cm2. */
  coatedWidthCm2: number
}

/** Of each cell the share of its hair that is left, and of each column the share of its width that is picked up. */
export type Within = { hair?: Float64Array | undefined; columns: Float64Array }

/** Sum a band cell by cell, with density and length taken at each cell's middle. */
export function sumBand(shape: BandShape, on: HairOnHead, { hair: left, columns }: Within): BandSums {
  const sums = { hairs: 0, hairCm: 0, coatedHairCm: 0, coatedWidthCm2: 0 }
  const { hairs: grown, lengthsCm } = bandCells(shape, on)
  const partingMm = shape.alongMm[shape.stations - 1]
  for (let station = 0, cell = 0; station < shape.stations - 1; station++) {
    const along = (shape.alongMm[station] + shape.alongMm[station + 1]) / (2 * partingMm)
    const from = on.coating.from(along)
    const column = { grown: 0, hairs: 0, hairCm: 0, coatedHairCm: 0 }
    for (let layer = 0; layer < shape.layers - 1; layer++, cell++) {
      const hairs = left ? grown[cell] * left[cell] : grown[cell]
      column.grown += grown[cell]
      column.hairs += hairs
      column.hairCm += hairs * lengthsCm[cell]
      column.coatedHairCm += hairs * coatedFrom(on.coating, from, lengthsCm[cell])
    }
    const share = columns[station]
    const widthCm = (share * (shape.alongMm[station + 1] - shape.alongMm[station])) / 10
    sums.hairs += share * column.hairs
    sums.hairCm += share * column.hairCm
    sums.coatedHairCm += share * column.coatedHairCm
    if (column.grown > 0) sums.coatedWidthCm2 += (widthCm * column.coatedHairCm) / column.grown
  }
  return sums
}
