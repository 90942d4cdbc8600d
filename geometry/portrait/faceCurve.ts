import type { Pair } from "../surface/frames"
import type { HeadLine } from "./headLine"

/**
 * A line of the face as seen square on, mm of the unscaled head: from in front in (x, z), from the right in (y, z).
 * A mirrored one is given on the client's right.
 */
export type FaceCurve = {
  part: HeadLine["part"]
  weight: HeadLine["weight"]
  seenFrom: "front" | "right"
  points: readonly Pair[]
  isMirrored: boolean
}

type Pen = Pick<FaceCurve, "part" | "weight">

/** A curve on each side of the face. */
export const onEachSide = (pen: Pen, points: readonly Pair[]): FaceCurve => ({
  ...pen,
  seenFrom: "front",
  points,
  isMirrored: true,
})

/** A curve across the midline, given by its half on the client's right, from the midline outward. */
export const acrossFace = (pen: Pen, half: readonly Pair[]): FaceCurve => {
  const image = half.slice(1).map(([x, z]): Pair => [-x, z])
  return { ...pen, seenFrom: "front", points: [...image.reverse(), ...half], isMirrored: false }
}

/** Points from their numbers in a row, two each. */
export const pairs = (numbers: readonly number[]): Pair[] =>
  Array.from({ length: numbers.length / 2 }, (_, i) => [numbers[2 * i], numbers[2 * i + 1]])
