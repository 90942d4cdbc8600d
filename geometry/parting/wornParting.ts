import type { Head } from "../scalp/head"
import { type SurfacePoint, surfacePoint } from "../surface/frames"
import { leftOf, measurePath, resampleMeasured, type SurfacePath } from "../surface/surfacePath"
import { walk } from "../surface/surfaceWalk"
import { multiply } from "../surface/vec3"
import { straightParting } from "./parting"

/** The parting a client wears: a side one so many mm from centre front along the hairline. */
export type WornParting =
  | { kind: "centre" }
  | { kind: "side"; side: "left" | "right"; offCentreMm: number }
  | { kind: "zigzag" }
  | { kind: "none" }

/** Which way the hair of the crown grows round its middle, seen from above it. */
export const whorlTurns = ["clockwise", "anticlockwise", "none"] as const
export type Whorl = { at: SurfacePoint; turns: (typeof whorlTurns)[number] }

/** Where a whorl most often lies, a little behind the top of the head on the right; common practice, no source. */
export const usualWhorlAt = surfacePoint(0.08, -0.12)

/** Where worn partings end, y and z of the unscaled head, mm: the crown. */
const [crownY, crownZ] = [-35, 118]
const zigzagStepMm = 14
const zigzagMm = 6

/** The parting worn as a line over the scalp, from the hairline back to the crown; empty for none. */
export function wornPath(head: Head, worn: WornParting): SurfacePath {
  if (worn.kind === "none") return []
  const off = worn.kind === "side" ? (worn.side === "left" ? -worn.offCentreMm : worn.offCentreMm) : 0
  const from = head.hairline.pointAlong(off)
  const [x] = head.surface.pointAt(from)
  const [, y, z] = multiply([0, crownY, crownZ], head.axes)
  const made = straightParting(head, from, head.surface.toSurface([x, y, z]))
  if ("refused" in made) return []
  return worn.kind === "zigzag" ? zigzag(head, made.parting) : made.parting
}

/** Corners to the left and the right of a line by turns, its ends on it. */
function zigzag({ surface }: Head, line: SurfacePath): SurfacePath {
  const measured = measurePath(surface, line)
  const even = resampleMeasured(measured, Math.max(3, Math.round(measured.lengthMm / zigzagStepMm) + 1))
  return even.map((at, i) => {
    if (i === 0 || i === even.length - 1) return at
    return walk(surface, { at, heading: leftOf(surface, even, i) }, i % 2 === 0 ? zigzagMm : -zigzagMm).at
  })
}

const whorlRadians = 0.13
const whorlRounds = 1.6
const whorlSteps = 48

/** A whorl as a line over the scalp: a spiral from its middle outward, the way the hair turns; empty for none. */
export function whorlPath({ at, turns }: Whorl): SurfacePath {
  if (turns === "none") return []
  const sense = turns === "clockwise" ? 1 : -1
  return Array.from({ length: whorlSteps + 1 }, (_, i) => {
    const share = i / whorlSteps
    const turn = sense * share * whorlRounds * 2 * Math.PI
    const reach = whorlRadians * share
    return surfacePoint(at[0] + reach * Math.sin(turn), at[1] + reach * Math.cos(turn))
  })
}
