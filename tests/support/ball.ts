import { type HairlineControl, makeHairline } from "../../geometry/scalp/hairline"
import type { Head } from "../../geometry/scalp/head"
import { type SurfacePoint, surfacePoint } from "../../geometry/surface/frames"
import { sphereSurface } from "../../geometry/surface/surface"

/** A ball for a head, mm: every length and area on it has a closed form. */
export const ballRadiusMm = 90
export const ball = sphereSurface(ballRadiusMm)

/** The place so many radians from the top, in a direction counted from the front to the head's right. */
export const onBall = (fromTop: number, turn: number): SurfacePoint =>
  surfacePoint(fromTop * Math.sin(turn), fromTop * Math.cos(turn))

/** An arc round the top of the ball. */
export const arcOnBall = (fromTop: number, fromTurn: number, toTurn: number, pieces = 40) =>
  Array.from({ length: pieces + 1 }, (_, i) => onBall(fromTop, fromTurn + ((toTurn - fromTurn) * i) / pieces))

/** The ball's hair ends on a circle so many radians from the top; its sideburns are a quarter turn from the front. */
export const ballHairReach = 1.9
const controls = Array.from(
  { length: 25 },
  (_, i): HairlineControl => ({
    ...(i === 12 && { name: "sideburn" }),
    at: onBall(ballHairReach, (Math.PI * i) / 24),
  }),
)
export const ballHead: Head = {
  axes: [1, 1, 1],
  surface: ball,
  hairline: makeHairline(ball, "round", controls),
}
