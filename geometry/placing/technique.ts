import {
  freehandParting,
  hairlineParting,
  type Parted,
  partingThrough,
  straightParting,
} from "../parting/parting"
import { landmarkNames } from "../scalp/hairlineLandmarks"
import type { Head } from "../scalp/head"
import { clipPath } from "../surface/clipPath"
import { cutLoops } from "../surface/cutLoops"
import type { SurfacePoint } from "../surface/frames"
import { smoothStep } from "../surface/smoothStep"
import { leftOf, type SurfacePath } from "../surface/surfacePath"
import { walk } from "../surface/surfaceWalk"
import { add, normalize, scale } from "../surface/vec3"

/**
 * A place told by the hairline, so that it is found on any head: 0 is centre front, 1 the recession, and so on in
 * the order of the landmarks; 1.4 lies four tenths of the way along the hairline from recession to temple. Negative
 * on the head's left. And so many mm inside the hairline, square to it.
 */
export type HairlinePlace = { landmark: number; behindMm: number }

/**
 * A parting of a technique: at the first spot's distance from the hairline all the way, drifting from the one
 * distance to the other, combed straight between the two places, or through every place of a list.
 */
export type TechniqueParting = PartingBetween | { run: "through"; spots: readonly HairlinePlace[] }
export type PartingBetween = {
  run: "parallel" | "drifting" | "straight"
  from: HairlinePlace
  to: HairlinePlace
}

/** The parting of a technique on one head, or the reason why that head has no room for it. */
export function fitParting(head: Head, parting: TechniqueParting): Parted {
  return parting.run === "through"
    ? through(head, parting.spots)
    : runs[parting.run](head, parting.from, parting.to)
}

/** The same parting told on the other side of the head, from its own hairline there. */
export const otherSide = (parting: TechniqueParting): TechniqueParting =>
  parting.run === "through"
    ? { run: "through", spots: parting.spots.map(opposite) }
    : { ...parting, from: opposite(parting.from), to: opposite(parting.to) }

const opposite = ({ landmark, behindMm }: HairlinePlace): HairlinePlace => ({ landmark: -landmark, behindMm })

/** Through the very places, unless the bends of this hairline are so tight that the line would cross itself. */
function through(head: Head, spots: readonly HairlinePlace[]): Parted {
  const exact = partingThrough(
    head,
    spots.map((spot) => placeOf(head, spot)),
  )
  return "parting" in exact ? exact : freehandParting(head, spots.flatMap(roomFor(head)))
}

const runs: Record<PartingBetween["run"], (head: Head, from: HairlinePlace, to: HairlinePlace) => Parted> = {
  straight: (head, from, to) => straightParting(head, placeOf(head, from), placeOf(head, to)),
  parallel,
  drifting: (head, from, to) => freehandParting(head, drift(head, from, to)),
}

/** Where the bends of the hairline are tighter than the distance the line drawn by its places is smoothed over them. */
function parallel(head: Head, from: HairlinePlace, to: HairlinePlace): Parted {
  const kept = hairlineParting(head, {
    fromAlongMm: alongMm(head, from.landmark),
    toAlongMm: alongMm(head, to.landmark),
    behindMm: from.behindMm,
  })
  const level = { ...to, behindMm: from.behindMm }
  return "parting" in kept ? kept : freehandParting(head, drift(head, from, level))
}

const driftSteps = 40

/**
 * Places from one spot to another; inside a bend tighter than the distance, those that come too near to the hairline
 * are left out. The ends, which the spots name, are kept: as deep as there is room, or nearly as deep as they are told.
 */
function drift(head: Head, from: HairlinePlace, to: HairlinePlace): SurfacePath {
  const spotAt = (step: number): HairlinePlace => {
    const share = step / driftSteps
    return {
      landmark: from.landmark + (to.landmark - from.landmark) * share,
      behindMm: from.behindMm + (to.behindMm - from.behindMm) * share,
    }
  }
  const kept = clipPath(
    driftSteps + 1,
    (step) => placeOf(head, spotAt(step)),
    (at, step) => hasRoom(head, at, spotAt(step)),
  )
  return cutLoops([...endAt(head, from), ...kept, ...endAt(head, to)])
}

/** Whether the place of a spot lies as far inside as told, and is not nearer to another stretch of the hairline. */
const hasRoom = ({ hairline }: Head, at: SurfacePoint, { behindMm }: HairlinePlace) =>
  hairline.coordinates(at).behindMm >= 0.95 * behindMm - 0.3

/** The place of a spot, or none inside a bend tighter than its distance. */
const roomFor = (head: Head) => (spot: HairlinePlace) => {
  const at = placeOf(head, spot)
  return hasRoom(head, at, spot) ? [at] : []
}

const nearlyAsDeep = 0.85

/** The end of a line whose spot has no room, if it has none. */
function endAt(head: Head, { landmark, behindMm }: HairlinePlace): SurfacePoint[] {
  const shallower = (mm: number) => ({ landmark, behindMm: mm })
  const hasRoomAt = (mm: number) => hasRoom(head, placeOf(head, shallower(mm)), shallower(mm))
  if (hasRoomAt(behindMm)) return []
  let [room, noRoom] = [nearlyAsDeep * behindMm, behindMm]
  for (let i = 0; i < 10; i++) {
    const middle = (room + noRoom) / 2
    if (hasRoomAt(middle)) room = middle
    else noRoom = middle
  }
  return [placeOf(head, shallower(room))]
}

/** How far along the hairline a counted landmark lies, mm; negative on the head's left, by the landmarks of that side. */
export function alongMm({ hairline }: Head, landmark: number): number {
  const { landmarkAlongMm } = hairline.sides[landmark < 0 ? "left" : "right"]
  const count = Math.min(landmarkNames.length - 1, Math.abs(landmark))
  const before = Math.min(Math.floor(count), landmarkNames.length - 2)
  const [from, to] = [before, before + 1].map((index) => landmarkAlongMm(landmarkNames[index]))
  return Math.sign(landmark) * (from + (to - from) * (count - before))
}

/** The hairline's direction is taken over this far to either side, mm, so that a corner does not turn the way in. */
const reachMm = 12
/** From here to there inside, mm, the way in is turned by a share from square to the hairline to the crown: a long lever would swing. */
const [squareMm, turnedMm, towardCrown] = [30, 110, 0.35]

/** The place of the scalp that a spot tells. */
export const placeOf = (head: Head, { landmark, behindMm }: HairlinePlace): SurfacePoint =>
  placeBehind(head, alongMm(head, landmark), behindMm)

/** The place so far along the hairline and so far inside it, mm: square to its direction there, and far inside a little toward the crown. */
export function placeBehind({ surface, hairline }: Head, along: number, behindMm: number): SurfacePoint {
  const edge = [along - reachMm, along, along + reachMm].map(hairline.pointAlong)
  const at = edge[1]
  const share = towardCrown * smoothStep(squareMm, turnedMm, behindMm)
  const square = scale(leftOf(surface, edge, 1), share - 1)
  const [tangentU, tangentV] = surface.tangentsAt(at)
  const toCrown = normalize(add(scale(tangentU, -at[0]), scale(tangentV, -at[1])))
  const heading = normalize(add(square, scale(toCrown, share)))
  return walk(surface, { at, heading }, behindMm).at
}
