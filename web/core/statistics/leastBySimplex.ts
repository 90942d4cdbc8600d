import type { Vector } from "./matrix"

type Corner = { at: Vector; value: number }

/**
 * Where a smooth function of a few unknowns is least, near a start, by the downhill simplex (Nelder, Mead, Comput J
 * 1965;7:308), begun anew from what it found until that gains no more. `step` is how far the first corners lie.
 */
export function leastBySimplex(of: (at: Vector) => number, start: Vector, step: number): Vector {
  let best: Corner = { at: start, value: of(start) }
  for (let round = 0; round < 12; round++) {
    const next = descend(of, best.at, step / (1 + round))
    if (best.value - next.value < 1e-6) return next.value < best.value ? next.at : best.at
    best = next
  }
  return best.at
}

function descend(of: (at: Vector) => number, start: Vector, step: number): Corner {
  const corner = (at: Vector): Corner => ({ at, value: of(at) })
  let corners = [corner(start), ...start.map((value, j) => corner(start.with(j, value + step)))]
  for (let i = 0; i < 200 * start.length; i++) {
    corners = [...corners].sort((a, b) => a.value - b.value)
    const [best, worst] = [corners[0], corners[corners.length - 1]]
    if (worst.value - best.value < 1e-8) break
    const others = corners.slice(0, -1)
    const middle = start.map((_, j) => others.reduce((sum, { at }) => sum + at[j], 0) / others.length)
    const along = (share: number) => corner(middle.map((value, j) => value + share * (worst.at[j] - value)))
    const found = better(along, { best, worst, next: others[others.length - 1] })
    corners = found
      ? [...others, found]
      : [best, ...corners.slice(1).map(({ at }) => corner(at.map((value, j) => (value + best.at[j]) / 2)))]
  }
  return corners.reduce((a, b) => (b.value < a.value ? b : a))
}

type Known = { best: Corner; next: Corner; worst: Corner }

/** Reflected, and stretched or drawn in; null where none of them helps. */
function better(along: (share: number) => Corner, { best, next, worst }: Known): Corner | null {
  const reflected = along(-1)
  if (reflected.value < best.value) {
    const stretched = along(-2)
    return stretched.value < reflected.value ? stretched : reflected
  }
  if (reflected.value < next.value) return reflected
  const drawnIn = along(reflected.value < worst.value ? -0.5 : 0.5)
  return drawnIn.value < Math.min(reflected.value, worst.value) ? drawnIn : null
}
