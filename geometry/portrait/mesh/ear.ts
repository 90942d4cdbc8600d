import { add, cut, ellipsoid, type Field, sculpt } from "../../scalp/fields"
import type { Vec3 } from "../../surface/vec3"

/** The right ear's own frame: forward, up and outward from its middle; it leans back and flares from the head. */
const middle: Vec3 = [71.5, -12.5, 0.8]
const [backward, flare] = [0.18, 0.42]
const [sinBack, cosBack] = [Math.sin(backward), Math.cos(backward)]
const [sinFlare, cosFlare] = [Math.sin(flare), Math.cos(flare)]

/** A fold of skin round an ellipse in the ear's plane: how high it stands and how thick it is, by place. */
function fold(middle: Vec3, [a, b]: readonly [number, number], height: Level, radius: Level): Field {
  return (u, v, w) => {
    const [p, q] = [(u - middle[0]) / a, (v - middle[1]) / b]
    const unit = p * p + q * q
    const slope = Math.sqrt((p / a) ** 2 + (q / b) ** 2) + 1e-9
    const aside = (unit - Math.sqrt(unit)) / slope
    return Math.hypot(aside, w - middle[2] - height(u, v)) - radius(u, v)
  }
}
type Level = (forward: number, up: number) => number

/** From 0 to 1 as a value passes from one level to another. */
const ease = (value: number, from: number, to: number) => {
  const t = Math.min(1, Math.max(0, (value - from) / (to - from)))
  return t * t * (3 - 2 * t)
}

/** In (forward, up, outward), mm, before the ear narrows toward the lobe. */
const plain = sculpt(
  ellipsoid([-0.5, 1, -2.2], [11.5, 25, 3.4]),
  add(ellipsoid([4.5, 1, -8.5], [11.5, 20, 7.5]), 5), // root, toward the head
  add(ellipsoid([11, 9, -6], [5, 8, 5]), 5), // root of the rim
  cut(ellipsoid([2, -2.5, 3.4], [8, 11, 7.5]), 3), // bowl
  add(
    fold(
      [1.5, -1, 0],
      [8.6, 13.5],
      (u) => -0.6 - 9 * ease(u, 2, 9),
      () => 1.7,
    ),
    3.2,
  ), // inner fold
  add(
    fold(
      [0, 1, 0],
      [11.3, 25],
      (u, v) => 0.4 - 7 * ease(u, 4, 10) * ease(v, 14, 2) - 1.6 * ease(v, -4, -18),
      (_, v) => 2.3 + 0.5 * ease(v, -6, -20),
    ),
    2,
  ), // rim
  add(ellipsoid([1, -19, -1.6], [8, 7, 2.6]), 5), // lobe
  add(ellipsoid([11.5, -5, -2.2], [3.4, 5, 3.4]), 3), // tragus
)

/** The plain ear is leaned, and narrowed toward the lobe. */
const widthAt = (up: number) => 1.24 + 0.01 * up
const leanAt = (up: number) => 1 - 0.06 * up
const upright: Field = (u, v, w) => plain((u - leanAt(v)) / widthAt(v), v, w)

/** Signed distance to the right ear as it is drawn, mm in the head frame. */
export function rightEarDistance(x: number, y: number, z: number): number {
  const [beside, ahead, above] = [x - middle[0], y - middle[1], z - middle[2]]
  const along = ahead * cosBack + above * sinBack
  return upright(
    along * cosFlare - beside * sinFlare,
    above * cosBack - ahead * sinBack,
    beside * cosFlare + along * sinFlare,
  )
}

/** A place of the plain ear (forward, up, outward) in the head frame, mm. */
export function fromPlainEar([plainForward, up, outward]: Vec3): Vec3 {
  const forward = plainForward * widthAt(up) + leanAt(up)
  const beside = outward * cosFlare - forward * sinFlare
  const along = forward * cosFlare + outward * sinFlare
  return [
    middle[0] + beside,
    middle[1] + along * cosBack - up * sinBack,
    middle[2] + up * cosBack + along * sinBack,
  ]
}
