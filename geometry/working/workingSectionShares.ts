import type { Head } from "../scalp/head"
import { bandShape } from "../section/bandShape"
import { cellMiddle } from "../section/cellAreas"
import type { Band } from "../section/section"
import { areaAt, type Division } from "./workingSections"

/** How much of a band's scalp lies in each area of a divided head, cm2, in the order of the areas. */
export function sharesCm2(band: Band, head: Head, division: Division): number[] {
  const shape = bandShape(band, head)
  const across = shape.layers - 1
  const shares = division.areas.map(() => 0)
  for (const [cell, cm2] of shape.areasCm2.entries()) {
    const corner = Math.floor(cell / across) * shape.layers + (cell % across)
    const area = areaAt(division, head.surface.toSurface(cellMiddle(shape, corner)))
    if (area >= 0) shares[area] += cm2
  }
  return shares
}
