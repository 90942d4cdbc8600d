import type { Raster } from "./mesh/raster"

/** Where lines have been drawn on a page, to the nearest pixel, so that no line is drawn along another. */
export type LineMask = {
  add(path: readonly PagePoint[]): void
  /** Whether a line runs within the page's reach of a place. */
  isInked(point: PagePoint): boolean
}
type PagePoint = { x: number; y: number }

/** A page on which no line is drawn yet; lines reach `reachMm` to every side. */
export function blankMask({ left, top, width, height, mmPerPixel }: Raster, reachMm: number): LineMask {
  const inked = new Uint8Array(width * height)
  const column = (x: number) => Math.min(width - 1, Math.max(0, Math.floor((x - left) / mmPerPixel)))
  const row = (y: number) => Math.min(height - 1, Math.max(0, Math.floor((top - y) / mmPerPixel)))
  return {
    add(path) {
      for (const { x, y } of path)
        for (let j = row(y + reachMm); j <= row(y - reachMm); j++)
          inked.fill(1, j * width + column(x - reachMm), j * width + column(x + reachMm) + 1)
    },
    isInked: ({ x, y }) => inked[row(y) * width + column(x)] === 1,
  }
}
