import { crc32, deflateSync } from "node:zlib"
import type { Rect } from "./machine"

/** A part of a display's picture (X Window Dump, version 7, 32 bits a pixel) as a PNG. */
export function pngOfDisplay(dump: Buffer, { x, y, width, height }: Rect): Buffer {
  const [headerBytes, , , , , screenHeight] = words(dump, 6)
  const bytesPerLine = dump.readUInt32BE(48)
  const start = dump.length - bytesPerLine * screenHeight
  if (dump.readUInt32BE(44) !== 32 || start < headerBytes) throw new Error("not a picture of 32 bits a pixel")
  const lines = Buffer.alloc((width * 3 + 1) * height)
  for (let row = 0; row < height; row++)
    for (let column = 0; column < width; column++) {
      const from = start + (y + row) * bytesPerLine + (x + column) * 4
      const to = row * (width * 3 + 1) + 1 + column * 3
      // Blue, green, red and nothing, from the smallest byte on.
      lines[to] = dump[from + 2]
      lines[to + 1] = dump[from + 1]
      lines[to + 2] = dump[from]
    }
  return png(width, height, lines)
}

const words = (dump: Buffer, count: number) =>
  Array.from({ length: count }, (_, i) => dump.readUInt32BE(i * 4))

/** PNG (ISO/IEC 15948) of 8-bit red, green, blue without a filter. */
function png(width: number, height: number, lines: Buffer): Buffer {
  const header = Buffer.alloc(13)
  header.writeUInt32BE(width, 0)
  header.writeUInt32BE(height, 4)
  header.set([8, 2, 0, 0, 0], 8)
  const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10])
  const parts = [chunk("IHDR", header), chunk("IDAT", deflateSync(lines)), chunk("IEND", Buffer.alloc(0))]
  return Buffer.concat([signature, ...parts])
}

function chunk(kind: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(kind, "ascii"), data])
  const frame = Buffer.alloc(8)
  frame.writeUInt32BE(data.length, 0)
  frame.writeUInt32BE(crc32(body), 4)
  return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)])
}
