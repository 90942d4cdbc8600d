/** Pixels from the middle of a bowl's triangle to where the next may stand beside its letter. */
export const bowlWidth = 34
const levels = 3

/** On which line above the foils each bowl stands, from the lowest, so that no letter lies under the next triangle. */
export function bowlLevels(places: readonly number[]): number[] {
  const freeFrom: number[] = new Array(levels).fill(Number.NEGATIVE_INFINITY)
  const inOrder = places.map((x, at) => ({ x, at })).sort((a, b) => a.x - b.x)
  const found: number[] = new Array(places.length).fill(0)
  for (const { x, at } of inOrder) {
    const free = freeFrom.findIndex((from) => from <= x)
    const level = free === -1 ? freeFrom.indexOf(Math.min(...freeFrom)) : free
    freeFrom[level] = x + bowlWidth
    found[at] = level
  }
  return found
}
