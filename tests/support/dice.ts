/** A small repeatable generator (xorshift, 32 bit): even between 0 and 1, and normal by Box and Muller. */
export function makeDice(start: number) {
  let state = start
  const even = () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    return (state >>> 0) / 2 ** 32
  }
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even())
  return { even, normal }
}
