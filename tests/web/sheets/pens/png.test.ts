import { crc32, inflateSync } from "node:zlib"
import { expect, it } from "vitest"
import { toPng } from "../../../../web/sheets/pens/png"

// Read back by hand with Node's zlib, which checks the sums of what it unpacks.
it.each([
  [3, 2],
  [200, 150],
])("is a PNG of %i by %i pixels that holds each as it was", (width, height) => {
  const data = Uint8ClampedArray.from({ length: 4 * width * height }, (_, i) => (i * 37) % 251)
  const png = Buffer.from(toPng({ data, width, height }))
  expect(png.subarray(1, 4).toString()).toBe("PNG")
  const chunks: Record<string, Buffer> = {}
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at)
    const named = png.subarray(at + 4, at + 8 + length)
    expect(png.readUInt32BE(at + 8 + length)).toBe(crc32(named))
    chunks[named.subarray(0, 4).toString()] = named.subarray(4)
    at += 12 + length
  }
  expect(Object.keys(chunks)).toEqual(["IHDR", "IDAT", "IEND"])
  expect([chunks.IHDR.readUInt32BE(0), chunks.IHDR.readUInt32BE(4)]).toEqual([width, height])
  const rows = inflateSync(chunks.IDAT)
  const row = 4 * width + 1
  expect(rows).toHaveLength(height * row)
  for (let y = 0; y < height; y++) {
    expect(rows[y * row]).toBe(0)
    expect([...rows.subarray(y * row + 1, (y + 1) * row)]).toEqual([
      ...data.subarray(4 * width * y, 4 * width * (y + 1)),
    ])
  }
})
