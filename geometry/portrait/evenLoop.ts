import type { ContourPoint } from "./contours"

/** The same closed loop with points about `spacingMm` apart on the page, lightly smoothed. */
export const evenLoop = (loop: readonly ContourPoint[], spacingMm: number): ContourPoint[] =>
  smoothLoop(smoothLoop(spread(loop, spacingMm)))

function spread(loop: readonly ContourPoint[], spacingMm: number): ContourPoint[] {
  const lengths = loop.map((point, i) => apart(point, loop[(i + 1) % loop.length]))
  const total = lengths.reduce((sum, each) => sum + each, 0)
  const count = Math.max(3, Math.round(total / spacingMm))
  const points: ContourPoint[] = []
  let [i, passed] = [0, 0]
  for (let k = 0; k < count; k++) {
    const wanted = (k / count) * total
    while (i < loop.length - 1 && passed + lengths[i] < wanted) passed += lengths[i++]
    const t = lengths[i] > 0 ? (wanted - passed) / lengths[i] : 0
    points.push(mix(loop[i], loop[(i + 1) % loop.length], t))
  }
  return points
}

const smoothLoop = (loop: readonly ContourPoint[]) =>
  loop.map((point, i) => mix(point, mix(loop.at(i - 1) ?? point, loop[(i + 1) % loop.length], 0.5), 0.5))

const apart = (a: ContourPoint, b: ContourPoint) => Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2)

const mix = (a: ContourPoint, b: ContourPoint, t: number): ContourPoint => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
  depth: a.depth + (b.depth - a.depth) * t,
  outX: a.outX + (b.outX - a.outX) * t,
  outY: a.outY + (b.outY - a.outY) * t,
  bulge: a.bulge + (b.bulge - a.bulge) * t,
})
