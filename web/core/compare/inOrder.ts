/**
 * Of places in another order, which stand right: those that every longest run of rising places holds. One that was taken
 * out and put elsewhere is alone out of order; of two that changed places, both are.
 */
export function inOrder(places: readonly number[]): boolean[] {
  const upTo = longestRuns(places)
  const from = longestRuns(places.map((place) => -place).toReversed()).toReversed()
  const longest = Math.max(0, ...upTo)
  const isInOne = places.map((_, i) => upTo[i] + from[i] - 1 === longest)
  const count = new Map<number, number>()
  for (const [i, is] of isInOne.entries()) if (is) count.set(upTo[i], (count.get(upTo[i]) ?? 0) + 1)
  return places.map((_, i) => isInOne[i] && count.get(upTo[i]) === 1)
}

/** The length of the longest rising run that ends at each place. */
function longestRuns(places: readonly number[]): number[] {
  const runs: number[] = []
  for (const [i, place] of places.entries()) {
    let longest = 0
    for (let before = 0; before < i; before++)
      if (places[before] < place && runs[before] > longest) longest = runs[before]
    runs.push(longest + 1)
  }
  return runs
}
