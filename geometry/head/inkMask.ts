import type { HeadLine } from "./headLine"
import type { Raster } from "./raster"

/** Answers whether a page place is within `reachMm` of one of the lines, to the nearest pixel. */
export function inkMask(lines: readonly HeadLine[], page: Raster, reachMm: number) {
  const { left, top, width, height, mmPerPixel } = page
  const inked = new Uint8Array(width * height)
  const column = (x: number) => Math.floor((x - left) / mmPerPixel)
  const row = (y: number) => Math.floor((top - y) / mmPerPixel)
  for (const { path } of lines)
    for (const [x, y] of path)
      for (let j = row(y + reachMm); j <= row(y - reachMm); j++)
        inked.fill(1, j * width + column(x - reachMm), j * width + column(x + reachMm) + 1)
  return (x: number, y: number) => inked[row(y) * width + column(x)] === 1
}
