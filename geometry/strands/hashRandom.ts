/** A number from 0 to 1 that is the same for the same two whole numbers and else as good as drawn by lot. */
export function hashRandom(a: number, b: number): number {
  let hash = Math.imul(a ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(b + 0x7f4a7c15, 0xc2b2ae35)
  hash = Math.imul(hash ^ (hash >>> 16), 0x21f0aaad)
  hash = Math.imul(hash ^ (hash >>> 15), 0x735a2d97)
  return ((hash ^ (hash >>> 15)) >>> 0) / 4294967296
}
