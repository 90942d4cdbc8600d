import { mirrored, type SurfacePoint } from "../surface/frames"
import { mirror, type SurfacePath } from "../surface/surfacePath"
import { followMoves } from "./followMoves"
import type { HairlineSide, LandmarkedHairline } from "./hairline"
import type { Head } from "./head"

const remembered = new WeakMap<Head, (at: SurfacePoint) => SurfacePoint>()

/**
 * A path of the scalp map told on the other side of a head: its mirror image, and where the hairline of that side
 * differs, taken along to it as if its landmarks had been moved from the mirror image's.
 */
export function onOtherSide(head: Head, path: SurfacePath): SurfacePath {
  const image = mirror(path)
  if (head.hairline.isEven) return image
  const follow = remembered.get(head) ?? followMoves(mirrorOf(head.hairline), head.hairline)
  remembered.set(head, follow)
  return image.map(follow)
}

type Followed = Parameters<typeof followMoves>[0]

const mirrorOf = ({ sides, pointAlong, contains }: LandmarkedHairline): Followed => ({
  sides: { left: sideOf(sides.right), right: sideOf(sides.left) },
  pointAlong: (alongMm) => mirrored(pointAlong(-alongMm)),
  contains: (at) => contains(mirrored(at)),
})

const sideOf = (side: HairlineSide): HairlineSide => ({
  ...side,
  landmarks: new Map(Array.from(side.landmarks, ([name, at]) => [name, mirrored(at)])),
})
