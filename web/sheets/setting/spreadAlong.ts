/**
 * Where to centre labels along a line so that none covers another: each as near its wish as the ones before it
 * allow, the row then pushed back inside its bounds. Wishes rise; all in mm.
 */
export function spreadAlong(
  wishes: readonly number[],
  widths: readonly number[],
  [from, to]: readonly [number, number],
): number[] {
  const centres: number[] = []
  let free = from
  for (const [i, wish] of wishes.entries()) {
    centres.push(Math.max(wish, free + widths[i] / 2))
    free = centres[i] + widths[i] / 2
  }
  let limit = to
  for (let i = centres.length - 1; i >= 0; i--) {
    centres[i] = Math.min(centres[i], limit - widths[i] / 2)
    limit = centres[i] - widths[i] / 2
  }
  return centres
}
