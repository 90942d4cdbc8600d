import { type Cubic, smoothCubics } from "./spline"
import type { Surface } from "./surface"
import type { SurfacePath } from "./surfacePath"

/** The smooth line through the points of a path, as cubics of the scalp map, measured along the surface. */
export type SmoothCurve = { pieces: readonly Piece[]; lengthMm: number }

/** A stretch of one cubic: its middle and half its width there, where it begins, and its mean, tilt and bow of mm a share of it. */
type Piece = {
  cubic: Cubic
  middle: number
  half: number
  fromMm: number
  lengthMm: number
  tilt: number
  bow: number
}

/** No piece is longer than this, radians of the map: about 8 mm. */
const pieceRadians = 0.1

export function smoothCurve(surface: Surface, path: SurfacePath): SmoothCurve {
  const pieces: Piece[] = []
  const frame = new Float64Array(9)
  let fromMm = 0
  for (const cubic of smoothCubics(path)) {
    const reach = Math.hypot(sum(cubic.u) - cubic.u[0], sum(cubic.v) - cubic.v[0])
    const count = Math.max(1, Math.ceil(reach / pieceRadians))
    for (let i = 0; i < count; i++) {
      const [middle, half] = [(i + 0.5) / count, 0.5 / count]
      const { lengthMm, tilt, bow } = paced(surface, cubic, middle, half, frame)
      pieces.push({ cubic, middle, half, fromMm, lengthMm, tilt, bow })
      fromMm += lengthMm
    }
  }
  return { pieces, lengthMm: fromMm }
}

const sum = ([a, b, c, d]: readonly number[]) => a + b + c + d

/** Gauss's outer places and the weights of three (Abramowitz, Stegun 25.4.30): exact for a speed of the fifth degree. */
const outer = Math.sqrt(0.6)

/** How fast a piece runs over the surface: a parabola through its speeds at Gauss's three places, by Legendre's terms. */
function paced(surface: Surface, cubic: Cubic, middle: number, half: number, frame: Float64Array) {
  const before = speedAt(surface, cubic, middle - half * outer, frame)
  const at = speedAt(surface, cubic, middle, frame)
  const after = speedAt(surface, cubic, middle + half * outer, frame)
  const mean = (5 * before + 8 * at + 5 * after) / 18
  return {
    lengthMm: 2 * half * mean,
    tilt: ((5 / 6) * outer * (after - before)) / mean,
    bow: (5 * (before + after) - 10 * at) / 9 / mean,
  }
}

/** Mm of surface a share of a cubic. */
function speedAt(surface: Surface, cubic: Cubic, share: number, frame: Float64Array): number {
  const { u, v, du, dv } = onCubic(cubic, share)
  surface.frameAt(u, v, frame)
  const x = du * frame[3] + dv * frame[6]
  const y = du * frame[4] + dv * frame[7]
  const z = du * frame[5] + dv * frame[8]
  return Math.sqrt(x * x + y * y + z * z)
}

/** A place of a smooth line and its direction there, of no particular length, in the scalp map. */
export type OnCurve = { u: number; v: number; du: number; dv: number }

/** The place of a smooth line after so many mm, and its direction there. */
export function alongCurve({ pieces }: SmoothCurve, alongMm: number): OnCurve {
  let i = 0
  while (i + 1 < pieces.length && alongMm > pieces[i + 1].fromMm) i++
  const { cubic, middle, half, fromMm, lengthMm, tilt, bow } = pieces[i]
  const walked = Math.min(1, Math.max(0, (alongMm - fromMm) / lengthMm))
  let x = 2 * walked - 1
  for (let step = 0; step < newtonSteps; step++)
    x -=
      (x + 1 + (tilt * (x * x - 1)) / 2 + (bow * (x * x * x - x)) / 2 - 2 * walked) /
      (1 + tilt * x + bow * (1.5 * x * x - 0.5))
  return onCubic(cubic, middle + half * x)
}

const newtonSteps = 3

function onCubic({ u, v }: Cubic, t: number): OnCurve {
  return {
    u: u[0] + t * (u[1] + t * (u[2] + t * u[3])),
    v: v[0] + t * (v[1] + t * (v[2] + t * v[3])),
    du: u[1] + t * (2 * u[2] + t * 3 * u[3]),
    dv: v[1] + t * (2 * v[2] + t * 3 * v[3]),
  }
}
