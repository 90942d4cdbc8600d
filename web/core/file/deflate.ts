/** Raw deflate (RFC 1951) by the browser's own streams, and its way back. */

/** Old browsers have none; then a technique travels as a file. */
export const canDeflate = () => typeof CompressionStream === "function"

export const deflate = (bytes: Uint8Array<ArrayBuffer>) =>
  readAll(new Blob([bytes]).stream().pipeThrough(new CompressionStream("deflate-raw")), Infinity)

/** The bytes that were deflated, or null as soon as there are more of them than expected. Throws on what is no deflate. */
export const inflate = (bytes: Uint8Array<ArrayBuffer>, most: number) =>
  readAll(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw")), most)

async function readAll(stream: ReadableStream<Uint8Array<ArrayBuffer>>, most: number) {
  const reader = stream.getReader()
  const parts: Uint8Array<ArrayBuffer>[] = []
  let size = 0
  for (;;) {
    const { done, value } = await reader.read()
    if (done) return new Uint8Array(await new Blob(parts).arrayBuffer())
    size += value.length
    if (size > most) {
      await reader.cancel()
      return null
    }
    parts.push(value)
  }
}
