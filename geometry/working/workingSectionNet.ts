import { type SurfacePoint, surfacePoint } from "../surface/frames"
import { mapDistance, type SurfacePath } from "../surface/surfacePath"

/** Lines of the scalp map that cross, as knots and the stretches of line between them. */
export type Net = { knots: readonly SurfacePoint[]; stretches: readonly Stretch[] }

/** Part of a line from knot to knot; `fromAt` and `toAt` count its points, with shares between them. */
export type Stretch = {
  /** Which of the lines; the closed ring round them all is -1. */
  line: number
  from: number
  to: number
  fromAt: number
  toAt: number
  path: SurfacePath
}

type Stop = { at: number; knot: number }

/** Crossings nearer than this are one, radians: about a millimetre and a half. */
const oneKnot = 0.02
/** A stretch from a knot back to the same knot is no more than the knot itself when it is as short as this. */
const noStretch = 4 * oneKnot

/** The net of a closed ring and the lines across it, of which only what lies inside counts. */
export function netOf(
  ring: SurfacePath,
  lines: readonly SurfacePath[],
  isInside: (at: SurfacePoint) => boolean,
): Net {
  const chains = [closed(ring), ...lines]
  const knots: SurfacePoint[] = []
  const stops: Stop[][] = chains.map(() => [])
  const knotAt = (at: SurfacePoint) => {
    const near = knots.findIndex((knot) => mapDistance(knot, at) < oneKnot)
    return near >= 0 ? near : knots.push(at) - 1
  }
  for (let j = 1; j < chains.length; j++)
    for (let i = 0; i < j; i++)
      for (const { at, onFirst, onSecond } of crossings(chains[i], chains[j])) {
        const knot = knotAt(at)
        stops[i].push({ at: onFirst, knot })
        stops[j].push({ at: onSecond, knot })
      }
  for (let i = 1; i < chains.length; i++) {
    const last = chains[i].length - 1
    stops[i].push({ at: 0, knot: knotAt(chains[i][0]) }, { at: last, knot: knotAt(chains[i][last]) })
  }
  const stretches = chains.flatMap((chain, i) => {
    const sorted = stops[i].toSorted((a, b) => a.at - b.at)
    return i === 0 ? roundRing(chain, sorted, knots) : alongLine(chain, sorted, knots, i - 1)
  })
  return { knots, stretches: stretches.filter(({ line, path }) => line < 0 || isInside(middleOf(path))) }
}

const closedRings = new WeakMap<SurfacePath, SurfacePath>()

/** A ring with its first point again at its end; the same object for the same ring. */
function closed(ring: SurfacePath): SurfacePath {
  const known = closedRings.get(ring) ?? [...ring, ring[0]]
  closedRings.set(ring, known)
  return known
}

function roundRing(chain: SurfacePath, stops: readonly Stop[], knots: SurfacePath): Stretch[] {
  if (stops.length === 0) return []
  const round = chain.length - 1
  const again = { ...stops[0], at: stops[0].at + round }
  return alongLine([...chain, ...chain.slice(1)], [...stops, again], knots, -1)
}

function alongLine(chain: SurfacePath, stops: readonly Stop[], knots: SurfacePath, line: number): Stretch[] {
  return stops.slice(1).flatMap((to, i) => {
    const from = stops[i]
    const inner = chain.slice(Math.floor(from.at) + 1, Math.ceil(to.at))
    const path = [knots[from.knot], ...inner, knots[to.knot]]
    if (from.knot === to.knot && mapLength(path) < noStretch) return []
    return [{ line, from: from.knot, to: to.knot, fromAt: from.at, toAt: to.at, path }]
  })
}

export type Crossing = { at: SurfacePoint; onFirst: number; onSecond: number }

const known = new WeakMap<SurfacePath, WeakMap<SurfacePath, readonly Crossing[]>>()

/** Where two lines cross: the place, and how far along each; remembered for as long as both live. */
export function crossings(first: SurfacePath, second: SurfacePath): readonly Crossing[] {
  const ofFirst = known.get(first) ?? new WeakMap<SurfacePath, readonly Crossing[]>()
  known.set(first, ofFirst)
  const found = ofFirst.get(second) ?? findCrossings(first, second)
  ofFirst.set(second, found)
  return found
}

function findCrossings(first: SurfacePath, second: SurfacePath): Crossing[] {
  const found: Crossing[] = []
  for (let j = 1; j < second.length; j++) {
    const [c, d] = [second[j - 1], second[j]]
    const [lowU, highU] = c[0] < d[0] ? [c[0], d[0]] : [d[0], c[0]]
    const [lowV, highV] = c[1] < d[1] ? [c[1], d[1]] : [d[1], c[1]]
    for (let i = 1; i < first.length; i++) {
      const [a, b] = [first[i - 1], first[i]]
      if ((a[0] < lowU && b[0] < lowU) || (a[0] > highU && b[0] > highU)) continue
      if ((a[1] < lowV && b[1] < lowV) || (a[1] > highV && b[1] > highV)) continue
      const shares = meet(a, b, c, d)
      if (!shares) continue
      const [s, t] = shares
      const at = surfacePoint(a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1]))
      found.push({ at, onFirst: i - 1 + s, onSecond: j - 1 + t })
    }
  }
  return found
}

/** So little past its end a piece still meets another: a corner is found twice rather than never, and is one knot. */
const hair = 1e-6
const isOn = (share: number) => share >= -hair && share <= 1 + hair

/** How far along each of two pieces, 0 to 1, they meet; null when they do not. */
function meet(a: SurfacePoint, b: SurfacePoint, c: SurfacePoint, d: SurfacePoint) {
  const [pu, pv, qu, qv] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]]
  const turn = pu * qv - pv * qu
  if (turn === 0) return null
  const s = ((c[0] - a[0]) * qv - (c[1] - a[1]) * qu) / turn
  const t = ((c[0] - a[0]) * pv - (c[1] - a[1]) * pu) / turn
  return isOn(s) && isOn(t) ? ([s, t] as const) : null
}

const mapLength = (path: SurfacePath) =>
  path.slice(1).reduce((sum, at, i) => sum + mapDistance(at, path[i]), 0)

function middleOf(path: SurfacePath): SurfacePoint {
  const i = (path.length - 1) >> 1
  const [a, b] = [path[i], path[i + 1]]
  return surfacePoint((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
}

/** A net without what encloses nothing: loose ends, and lines that hang together with the ring (-1) nowhere. */
export function pruned(net: Net): Net {
  let kept = net.stretches
  for (let before = -1; before !== kept.length; ) {
    before = kept.length
    const degree = new Int32Array(net.knots.length)
    for (const { from, to } of kept) {
      degree[from] += 1
      degree[to] += 1
    }
    kept = kept.filter(({ from, to }) => degree[from] > 1 && degree[to] > 1)
  }
  return { knots: net.knots, stretches: joinedToRing(kept, net.knots.length) }
}

function joinedToRing(stretches: readonly Stretch[], count: number): Stretch[] {
  const reached = new Uint8Array(count)
  for (const { line, from } of stretches) if (line < 0) reached[from] = 1
  for (let grew = true; grew; ) {
    grew = false
    for (const { from, to } of stretches)
      if (reached[from] !== reached[to]) {
        reached[from] = reached[to] = 1
        grew = true
      }
  }
  return stretches.filter(({ from }) => reached[from] === 1)
}
