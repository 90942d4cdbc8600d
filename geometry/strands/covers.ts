import { type BandSpans, crossing, sidesEach } from "../section/bandSpans"

/** Whether a band covers a place of the map, radians: its outline goes round it, once or more. */
export function covers(spans: BandSpans, u: number, v: number): boolean {
  if (u < spans.lowU || u > spans.highU || v < spans.lowV || v > spans.highV) return false
  const { us, vs, boxes } = spans
  let turns = 0
  const count = us.length
  for (let first = 0, box = 0; first < count; first += sidesEach, box += 4) {
    if (v < boxes[box + 2] || v > boxes[box + 3] || u > boxes[box + 1]) continue
    const last = Math.min(count, first + sidesEach)
    let isUnder = vs[first] <= v
    if (u < boxes[box]) {
      const isEndUnder = vs[last === count ? 0 : last] <= v
      if (isUnder !== isEndUnder) turns += isUnder ? 1 : -1
      continue
    }
    for (let side = first; side < last; side++) {
      const next = side + 1 === count ? 0 : side + 1
      const isNextUnder = vs[next] <= v
      if (isUnder !== isNextUnder && crossing(us, vs, side, next, v) > u) turns += isUnder ? 1 : -1
      isUnder = isNextUnder
    }
  }
  return turns !== 0
}
