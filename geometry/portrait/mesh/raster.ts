import type { Mesh } from "./mesh"
import type { SeenMesh } from "./seenMesh"

/**
 * A page of square pixels, rows from the top; `left` and `top` are the page mm of its edges.
 * `depth` is mm toward the viewer, minus infinity where nothing is; `tone` is what was given for the points.
 */
export type Raster = {
  width: number
  height: number
  mmPerPixel: number
  left: number
  top: number
  depth: Float32Array
  tone: Float32Array
}

/** What a raster is drawn from: a mesh, its points as the view sees them, and a tone for each point. */
export type Subject = { mesh: Mesh; seen: SeenMesh; tones: Float64Array }

/** Draws the nearest triangle in every pixel (a z-buffer), carrying the tones. */
export function rasterOf(subjects: readonly Subject[], mmPerPixel: number): Raster {
  const raster = emptyRaster(
    subjects.map(({ seen }) => seen),
    mmPerPixel,
  )
  for (const subject of subjects) drawSubject(raster, subject)
  return raster
}

/** The page just holds the meshes and a pixel round them; x = 0 lies between two pixels so that mirror images agree. */
function emptyRaster(meshes: readonly SeenMesh[], mmPerPixel: number): Raster {
  let [reach, low, high] = [0, 0, 0]
  for (const { x, y } of meshes)
    for (let i = 0; i < x.length; i++) {
      reach = Math.max(reach, Math.abs(x[i]))
      low = Math.min(low, y[i])
      high = Math.max(high, y[i])
    }
  const half = Math.ceil(reach / mmPerPixel) + 1
  const rowsAbove = Math.ceil(high / mmPerPixel) + 1
  const [width, height] = [2 * half, rowsAbove + Math.ceil(-low / mmPerPixel) + 1]
  return {
    width,
    height,
    mmPerPixel,
    left: -half * mmPerPixel,
    top: rowsAbove * mmPerPixel,
    depth: new Float32Array(width * height).fill(Number.NEGATIVE_INFINITY),
    tone: new Float32Array(width * height),
  }
}

/** Draws the triangles that face the viewer. In one loop, with nothing looked up twice: it is most of what a turn costs. */
function drawSubject(raster: Raster, { mesh: { triangles }, seen: { x, y, depth }, tones }: Subject) {
  const { width, mmPerPixel: mm, left, top, depth: nearest, tone } = raster
  for (let i = 0; i < triangles.length; i += 3) {
    const a = triangles[i]
    const b = triangles[i + 1]
    const c = triangles[i + 2]
    const ax = x[a]
    const ay = y[a]
    const bx = x[b] - ax
    const by = y[b] - ay
    const cx = x[c] - ax
    const cy = y[c] - ay
    const area = bx * cy - by * cx
    if (area <= 0) continue
    const firstColumn = Math.ceil((ax + Math.min(0, bx, cx) - left) / mm - 0.5)
    const lastColumn = Math.floor((ax + Math.max(0, bx, cx) - left) / mm - 0.5)
    if (firstColumn > lastColumn) continue
    const firstRow = Math.ceil((top - ay - Math.max(0, by, cy)) / mm - 0.5)
    const lastRow = Math.floor((top - ay - Math.min(0, by, cy)) / mm - 0.5)
    for (let row = firstRow; row <= lastRow; row++) {
      const py = top - (row + 0.5) * mm - ay
      for (let column = firstColumn; column <= lastColumn; column++) {
        const px = left + (column + 0.5) * mm - ax
        const towardB = (px * cy - py * cx) / area
        const towardC = (py * bx - px * by) / area
        if (towardB < 0 || towardC < 0 || towardB + towardC > 1) continue
        const near = depth[a] + (depth[b] - depth[a]) * towardB + (depth[c] - depth[a]) * towardC
        const at = row * width + column
        if (near <= nearest[at]) continue
        nearest[at] = near
        tone[at] = tones[a] + (tones[b] - tones[a]) * towardB + (tones[c] - tones[a]) * towardC
      }
    }
  }
}

/** The page turned left to right; its x = 0 lies in the middle. */
export function mirroredRaster(raster: Raster): Raster {
  const { width, height } = raster
  const flip = (values: Float32Array) => {
    const flipped = values.slice()
    for (let row = 0; row < height; row++) flipped.subarray(row * width, (row + 1) * width).reverse()
    return flipped
  }
  return { ...raster, depth: flip(raster.depth), tone: flip(raster.tone) }
}

/** Depth at the pixel that holds a page point, mm toward the viewer; minus infinity off the head. */
export function depthAt({ left, top, mmPerPixel, width, height, depth }: Raster, x: number, y: number) {
  const column = Math.floor((x - left) / mmPerPixel)
  const row = Math.floor((top - y) / mmPerPixel)
  const isOnPage = column >= 0 && row >= 0 && column < width && row < height
  return isOnPage ? depth[row * width + column] : Number.NEGATIVE_INFINITY
}

/** The least depth of the four pixels whose middles lie round a page point, mm toward the viewer. */
export function farthestAround(raster: Raster, x: number, y: number) {
  const half = raster.mmPerPixel / 2
  return Math.min(
    depthAt(raster, x - half, y - half),
    depthAt(raster, x + half, y - half),
    depthAt(raster, x - half, y + half),
    depthAt(raster, x + half, y + half),
  )
}
