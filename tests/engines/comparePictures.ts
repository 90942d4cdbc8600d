import type { Page } from "playwright-core"

/** How unlike two pictures of one size are: shares of the squares they are cut into, by how far their mean grey is apart. */
export type Difference = { sizes: string; meanGrey: number; farShare: number }

/** Pixels a side: some letters wide, so that a glyph drawn half a pixel further or thicker hardly changes a square. */
const square = 16
/** Of 255: more than the edge of a line moved by a pixel makes in a square, less than a line that is missing. */
const far = 40

/** Compares two PNGs in a page of Chromium, which can read them. */
export const comparePictures = (page: Page, one: Buffer, other: Buffer): Promise<Difference> =>
  page.evaluate(
    async ([pictures, side, limit]) => {
      const squaresOf = async (base64: string) => {
        const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
        const picture = await createImageBitmap(new Blob([bytes], { type: "image/png" }))
        const { width, height } = picture
        const context = new OffscreenCanvas(width, height).getContext(
          "2d",
        ) as OffscreenCanvasRenderingContext2D
        context.drawImage(picture, 0, 0)
        const { data } = context.getImageData(0, 0, width, height)
        const columns = Math.floor(width / side)
        const greys = new Float64Array(columns * Math.floor(height / side))
        for (let y = 0; y < Math.floor(height / side) * side; y++)
          for (let x = 0; x < columns * side; x++) {
            const at = (y * width + x) * 4
            const grey = 0.3 * data[at] + 0.6 * data[at + 1] + 0.1 * data[at + 2]
            greys[Math.floor(y / side) * columns + Math.floor(x / side)] += grey / (side * side)
          }
        return { greys, size: `${width}x${height}` }
      }
      const [a, b] = await Promise.all(pictures.map(squaresOf))
      const apart = [...a.greys].map((grey, i) => Math.abs(grey - b.greys[i]))
      return {
        sizes: `${a.size} ${b.size}`,
        meanGrey: apart.reduce((sum, each) => sum + each, 0) / apart.length,
        farShare: apart.filter((each) => each > limit).length / apart.length,
      }
    },
    [[one.toString("base64"), other.toString("base64")], square, far] as const,
  )
