import { landmarkNames } from "../scalp/hairlineLandmarks"
import type { Head } from "../scalp/head"
import type { SurfacePoint } from "../surface/frames"
import type { SurfacePath } from "../surface/surfacePath"
import { distance } from "../surface/vec3"
import { alongMm, type HairlinePlace, placeBehind } from "./technique"

/** A parting as the spots that a technique tells it by: fitted to the same head it is the same to a hundredth of a mm. */
export const spotsOf = (head: Head, parting: SurfacePath): HairlinePlace[] =>
  parting.map((at) => spotOf(head, at))

/** A place by its way along the hairline and its way in, mm: what is searched for. */
type Foot = { along: number; behindMm: number }

/** The search begins at the nearest place of the hairline, then so far to either side of it, mm. */
const startsMm = [0, -8, 8, -20, 20, -40, 40, -70, 70]
const closeMm = 0.002

/** The spot that tells a place of the scalp: the way back from `placeOf`. */
export function spotOf(head: Head, at: SurfacePoint): HairlinePlace {
  const nearest = head.hairline.coordinates(at)
  let best = { along: nearest.alongMm, behindMm: nearest.behindMm }
  let bestMm = missMm(head, at, best)
  for (const startMm of startsMm) {
    if (bestMm <= closeMm) break
    const found = search(head, at, { along: nearest.alongMm + startMm, behindMm: nearest.behindMm })
    const foundMm = missMm(head, at, found)
    if (foundMm < bestMm) [best, bestMm] = [found, foundMm]
  }
  return { landmark: landmarkAt(head, best.along), behindMm: best.behindMm }
}

const missMm = (head: Head, at: SurfacePoint, { along, behindMm }: Foot) =>
  distance(head.surface.pointAt(placeBehind(head, along, behindMm)), head.surface.pointAt(at))

const mostSteps = 30
const nudgeMm = 0.05

/** Newton's way, each step halved until it comes nearer. */
function search(head: Head, at: SurfacePoint, start: Foot): Foot {
  let foot = start
  let miss = missMm(head, at, foot)
  for (let i = 0; i < mostSteps && miss > closeMm / 4; i++) {
    const step = newtonStep(head, at, foot)
    const next = [1, 0.5, 0.25, 0.1, 0.03]
      .map((share) => ({
        along: foot.along + share * step.along,
        behindMm: foot.behindMm + share * step.behindMm,
      }))
      .find((each) => missMm(head, at, each) < miss)
    if (!next) return foot
    foot = next
    miss = missMm(head, at, foot)
  }
  return foot
}

function newtonStep(head: Head, at: SurfacePoint, { along, behindMm }: Foot): Foot {
  const here = placeBehind(head, along, behindMm)
  const slopes = [
    [placeBehind(head, along + nudgeMm, behindMm), placeBehind(head, along - nudgeMm, behindMm)],
    [placeBehind(head, along, behindMm + nudgeMm), placeBehind(head, along, behindMm - nudgeMm)],
  ].map(([ahead, back]) => [0, 1].map((axis) => (ahead[axis] - back[axis]) / (2 * nudgeMm)))
  const [[ua, va], [ub, vb]] = slopes
  const [du, dv] = [at[0] - here[0], at[1] - here[1]]
  const area = ua * vb - va * ub
  return { along: (du * vb - dv * ub) / area, behindMm: (ua * dv - va * du) / area }
}

/** The landmark counted so far along the hairline: the way back from `alongMm`. */
export function landmarkAt(head: Head, along: number): number {
  const last = landmarkNames.length - 1
  const [lowMm, highMm] = [alongMm(head, -last), alongMm(head, last)]
  const round = highMm - lowMm
  const onceRound = along - round * Math.floor((along - lowMm) / round)
  let from = -last
  while (from < last - 1 && alongMm(head, from + 1) <= onceRound) from++
  const [fromMm, toMm] = [alongMm(head, from), alongMm(head, from + 1)]
  return from + (onceRound - fromMm) / (toMm - fromMm)
}
