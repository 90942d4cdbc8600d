import type { HeadSide } from "../../geometry/scalp/hairline"
import { type LandmarkName, landmarkNames } from "../../geometry/scalp/hairlineLandmarks"
import { type Head, makeHeadFromAxes } from "../../geometry/scalp/head"
import { type HairlineMoves, isOnMidline, type LandmarkMove } from "../../geometry/scalp/landmarkMoves"

/** The same head with its hairline moved. */
export const withMoves = ({ axes, surface, hairline }: Head, moves: HairlineMoves): Head =>
  makeHeadFromAxes(axes, hairline.form, moves, surface)

/** Every landmark of both sides moved by up to so many mm, each side otherwise; always the same for the same seed. */
export function randomMoves(mostMm: number, seed: number): HairlineMoves {
  let state = seed
  const stray = () => {
    state = (state * 16807) % 2147483647
    return mostMm * (2 * (state / 2147483647) - 1)
  }
  const side = () =>
    new Map(
      landmarkNames.map((name): [LandmarkName, LandmarkMove] => {
        const [towardNapeMm, behindMm] = [stray(), stray()]
        return [name, { towardNapeMm: isOnMidline(name) ? 0 : towardNapeMm, behindMm }]
      }),
    )
  const [right, left] = [side(), side()]
  for (const name of landmarkNames.filter(isOnMidline))
    left.set(name, right.get(name) ?? { towardNapeMm: 0, behindMm: 0 })
  return { left, right }
}

/** The moves with one landmark moved on, on the sides named. */
export function movedOn(
  moves: HairlineMoves,
  name: LandmarkName,
  sides: readonly HeadSide[],
  by: LandmarkMove,
): HairlineMoves {
  const move = (side: HeadSide) => {
    if (!sides.includes(side)) return moves[side]
    const { towardNapeMm, behindMm } = moves[side].get(name) ?? { towardNapeMm: 0, behindMm: 0 }
    const next = { towardNapeMm: towardNapeMm + by.towardNapeMm, behindMm: behindMm + by.behindMm }
    return new Map(moves[side]).set(name, next)
  }
  return { left: move("left"), right: move("right") }
}
