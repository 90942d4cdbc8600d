import { type Whorl, type WornParting, wornPath } from "../parting/wornParting"
import type { Head } from "../scalp/head"
import { smoothStep } from "../surface/smoothStep"
import { measurePath, resampleMeasured } from "../surface/surfacePath"
import { add, cross, distance, dot, multiply, normalize, scale, subtract, type Vec3 } from "../surface/vec3"

import type { WornFront } from "./gather"

/** How hair is combed at a root: a unit vector along the scalp, given its place and the way out of the scalp there. */
export type Combing = (root: Vec3, outward: Vec3) => Vec3

export type Worn = { parting: WornParting; whorl?: Whorl | undefined; front?: WornFront | undefined }

/** Away from the parting worn, and about the crown away from its end; where none is, back off the face and down behind. */
export function combDirection(head: Head, { parting, whorl }: Worn, combedBack: number): Combing {
  const line = partedAlong(head, parting)
  const turn = whorlTurn(head, whorl)
  return (root, outward) => {
    const away = subtract(root, nearestOn(line, root))
    const besideFace = combedBack * smoothStep(-45, 20, root[1] / head.axes[1])
    const behind = parting.kind === "none" ? smoothStep(30, -50, root[1] / head.axes[1]) : 0
    const along = alongScalp(add(normalize(away), [0, 0, -2 * behind]), outward)
    const back = alongScalp([0, -1, 0], outward)
    return turn(root, outward, normalize(add(along, scale(back, besideFace))))
  }
}

/** Hair without a parting is swept back from here, before the brow; mm of the unscaled head. */
const beforeBrow: Vec3 = [0, 150, 40]

/** The line that hair leaves on either side: the parting, or without one a place before the brow. */
function partedAlong(head: Head, parting: WornParting): Vec3[] {
  const path = wornPath(head, parting)
  if (path.length < 2) return [multiply(beforeBrow, head.axes)]
  return resampleMeasured(measurePath(head.surface, path), 48).map((at) => head.surface.pointAt(at))
}

/** The nearest place of a line of points in space, mm. */
function nearestOn(line: readonly Vec3[], point: Vec3): Vec3 {
  let nearest = line[0]
  let best = Number.POSITIVE_INFINITY
  for (let i = 1; i < line.length; i++) {
    const piece = subtract(line[i], line[i - 1])
    const share = dot(subtract(point, line[i - 1]), piece) / dot(piece, piece)
    const place = add(line[i - 1], scale(piece, Math.min(1, Math.max(0, share))))
    const apart = distance(place, point)
    if (apart < best) [nearest, best] = [place, apart]
  }
  return nearest
}

/** The part of a direction that lies along the scalp, made a unit vector; none where it points straight out. */
function alongScalp(direction: Vec3, outward: Vec3): Vec3 {
  const along = subtract(direction, scale(outward, dot(direction, outward)))
  const size = Math.sqrt(dot(along, along))
  return size > 1e-9 ? scale(along, 1 / size) : [0, 0, 0]
}

const whorlReachMm = 38

/** Hair near the middle of a whorl is turned round it, the less the farther off it grows. */
function whorlTurn(head: Head, whorl: Whorl | undefined) {
  if (!whorl || whorl.turns === "none") return (_: Vec3, _outward: Vec3, way: Vec3) => way
  const middle = head.surface.pointAt(whorl.at)
  const sense = whorl.turns === "clockwise" ? -1 : 1
  return (root: Vec3, outward: Vec3, way: Vec3): Vec3 => {
    const near = Math.exp(-((distance(root, middle) / whorlReachMm) ** 2))
    return normalize(add(way, scale(cross(outward, way), 1.3 * sense * near)))
  }
}
