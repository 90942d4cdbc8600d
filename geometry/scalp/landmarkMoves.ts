import { mirrored, type Pair, type SurfacePoint, surfacePoint } from "../surface/frames"
import type { Surface } from "../surface/surface"
import { mapDistance } from "../surface/surfacePath"
import { dot } from "../surface/vec3"
import type { HairlineControl, HeadSide } from "./hairline"
import type { LandmarkName } from "./hairlineLandmarks"

/**
 * How far a landmark is moved from where the form has it, mm on the scalp there: along the form's hairline toward the
 * nape, and square to it into the hair. So a move goes along when the head grows or the form changes.
 */
export type LandmarkMove = { towardNapeMm: number; behindMm: number }
export type HairlineMoves = Readonly<Record<HeadSide, ReadonlyMap<LandmarkName, LandmarkMove>>>

export const noMoves: HairlineMoves = { left: new Map(), right: new Map() }

/** Centre front and centre nape lie on the midline: they move up and down it, and are the same for both sides. */
export const isOnMidline = (name: LandmarkName) => name === "centre front" || name === "centre nape"

/**
 * The controls of each side, folded over to the head's right, with their moves. A control between two landmarks goes
 * along with both, the more with the nearer. Without moves on either side both are the form's own list.
 */
export function moveControls(
  surface: Surface,
  controls: readonly HairlineControl[],
  moves: HairlineMoves,
): Record<HeadSide, readonly HairlineControl[]> {
  const moved = (side: HeadSide) =>
    moves[side].size === 0 ? controls : moveSide(surface, controls, moves[side])
  const right = moved("right")
  return { right, left: areSame(moves.left, moves.right) ? right : moved("left") }
}

const areSame = (a: HairlineMoves[HeadSide], b: HairlineMoves[HeadSide]) =>
  a.size === b.size &&
  [...a].every(([name, move]) => {
    const other = b.get(name)
    return other?.behindMm === move.behindMm && other.towardNapeMm === move.towardNapeMm
  })

function moveSide(
  surface: Surface,
  controls: readonly HairlineControl[],
  moves: HairlineMoves[HeadSide],
): HairlineControl[] {
  const shifts = controls.map(({ name }, i): Pair | null => {
    if (!name) return null
    const move = moves.get(name)
    return move ? shiftOf(landmarkFrame(surface, controls, i), move) : [0, 0]
  })
  return controls.map((control, i) => {
    const [du, dv] = shifts[i] ?? between(controls, shifts, i)
    return { ...control, at: surfacePoint(control.at[0] + du, control.at[1] + dv) }
  })
}

/** The shift of a control without a name: a blend of the landmarks before and after it. */
function between(
  controls: readonly HairlineControl[],
  shifts: readonly (Pair | null)[],
  index: number,
): Pair {
  let [before, after] = [index, index]
  while (before > 0 && !shifts[before]) before--
  while (after < controls.length - 1 && !shifts[after]) after++
  const [from, to] = [shifts[before] ?? [0, 0], shifts[after] ?? [0, 0]]
  const share = wayBetween(controls, before, index) / wayBetween(controls, before, after)
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]
}

function wayBetween(controls: readonly HairlineControl[], from: number, to: number): number {
  let way = 0
  for (let i = from + 1; i <= to; i++) way += mapDistance(controls[i - 1].at, controls[i].at)
  return way
}

/** One mm along the form's hairline at a landmark, and one mm into the hair, in radians of the map. */
type LandmarkFrame = { alongHairline: Pair; intoHair: Pair }

function landmarkFrame(surface: Surface, controls: readonly HairlineControl[], index: number): LandmarkFrame {
  const { at } = controls[index]
  const before = controls[index - 1]?.at ?? mirrored(controls[index + 1].at)
  const after = controls[index + 1]?.at ?? mirrored(controls[index - 1].at)
  const [du, dv] = [after[0] - before[0], after[1] - before[1]]
  const [tangentU, tangentV] = surface.tangentsAt(at)
  const [e, f, g] = [dot(tangentU, tangentU), dot(tangentU, tangentV), dot(tangentV, tangentV)]
  const ofOneMm = ([u, v]: Pair): Pair => {
    const mm = Math.sqrt(e * u * u + 2 * f * u * v + g * v * v)
    return [u / mm, v / mm]
  }
  // The hair lies on the right of the way from centre front over the head's right to the nape.
  return { alongHairline: ofOneMm([du, dv]), intoHair: ofOneMm([f * du + g * dv, -e * du - f * dv]) }
}

const shiftOf = ({ alongHairline, intoHair }: LandmarkFrame, move: LandmarkMove): Pair => [
  alongHairline[0] * move.towardNapeMm + intoHair[0] * move.behindMm,
  alongHairline[1] * move.towardNapeMm + intoHair[1] * move.behindMm,
]

/** The move that brings a landmark of the form to a place, the place folded over to the head's right. */
export function moveTo(
  surface: Surface,
  controls: readonly HairlineControl[],
  name: LandmarkName,
  place: SurfacePoint,
): LandmarkMove {
  const index = controls.findIndex((control) => control.name === name)
  const [u, v] = [place[0] - controls[index].at[0], place[1] - controls[index].at[1]]
  const { alongHairline: a, intoHair: b } = landmarkFrame(surface, controls, index)
  if (isOnMidline(name)) return { towardNapeMm: 0, behindMm: v / b[1] }
  const area = a[0] * b[1] - a[1] * b[0]
  return { towardNapeMm: (u * b[1] - v * b[0]) / area, behindMm: (a[0] * v - a[1] * u) / area }
}
