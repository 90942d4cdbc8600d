type Pixels = { data: Uint8ClampedArray; width: number; height: number }

const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]
/** Eight bits each of red, green, blue and of how clear a pixel is. */
const rgba8 = [8, 6, 0, 0, 0]
const mostInBlock = 0xffff

/** Pixels as a PNG file, not compressed: whoever takes it in packs it (W3C PNG, third edition; RFC 1950, 1951). */
export function toPng({ data, width, height }: Pixels): Uint8Array {
  const rowBytes = 4 * width
  const rows = new Uint8Array(height * (rowBytes + 1))
  // Each row begins with its filter, here none.
  for (let y = 0; y < height; y++)
    rows.set(data.subarray(y * rowBytes, (y + 1) * rowBytes), y * (rowBytes + 1) + 1)
  return joined([
    Uint8Array.from(signature),
    chunk("IHDR", joined([int32(width), int32(height), Uint8Array.from(rgba8)])),
    chunk("IDAT", stored(rows)),
    chunk("IEND", new Uint8Array()),
  ])
}

function chunk(name: string, data: Uint8Array): Uint8Array {
  const named = joined([new TextEncoder().encode(name), data])
  return joined([int32(data.length), named, int32(crc32(named))])
}

/** A stream of blocks that stand as they are. */
function stored(bytes: Uint8Array): Uint8Array {
  const parts: Uint8Array[] = [Uint8Array.from([0x78, 0x01])]
  for (let at = 0; at < bytes.length; at += mostInBlock) {
    const block = bytes.subarray(at, at + mostInBlock)
    const [low, high] = [block.length & 0xff, block.length >> 8]
    const isLast = at + mostInBlock >= bytes.length
    parts.push(Uint8Array.from([isLast ? 1 : 0, low, high, ~low & 0xff, ~high & 0xff]), block)
  }
  return joined([...parts, int32(adler32(bytes))])
}

function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff
  for (const byte of bytes) {
    sum ^= byte
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1
  }
  return ~sum >>> 0
}

function adler32(bytes: Uint8Array): number {
  let [low, high] = [1, 0]
  for (const byte of bytes) {
    low = (low + byte) % 65521
    high = (high + low) % 65521
  }
  return ((high << 16) | low) >>> 0
}

const int32 = (value: number) => Uint8Array.from([24, 16, 8, 0], (shift) => (value >>> shift) & 0xff)

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
