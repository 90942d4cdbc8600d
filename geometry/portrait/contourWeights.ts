import { viewPoint } from "../surface/frames"
import { divide, type Vec3 } from "../surface/vec3"
import { type OrthographicView, unproject } from "../surface/views"
import type { ContourPoint } from "./contours"
import type { HeadLine } from "./headLine"
import type { BodyPart } from "./mesh/headMesh"
import { depthAt, type Raster } from "./mesh/raster"
import { runsOf, stretch, withoutShort } from "./runs"

/** A view of the head scaled by `axes`, drawn as a raster; contours on it are worked on with points `spacingMm` apart. */
export type Scene = { axes: Vec3; view: OrthographicView; raster: Raster; spacingMm: number }

/** How one point of a contour is drawn; null where it is not. */
export type Weight = HeadLine["weight"] | null

/** Shorter lines are not drawn and narrower gaps are bridged, mm. */
const shortestMm = 4
const widestGapMm = 2.5

/** A line before other skin is drawn when it is this long and the skin lies this far behind it somewhere, mm. */
const leastInner = { head: { lengthMm: 9, dropMm: 6 }, ear: { lengthMm: 14, dropMm: 3 } }

/** The weight of each point of an even, closed contour: bold against the page, medium before other skin. */
export function contourWeights(
  loop: readonly ContourPoint[],
  name: BodyPart["name"],
  scene: Scene,
): Weight[] {
  const { spacingMm } = scene
  const shortest = shortestMm / spacingMm
  const drops = loop.map((point) => dropBehind(point, scene.raster))
  const isSeen = seenPoints(drops, widestGapMm / spacingMm)
  const isOuter = outerPoints(drops, shortest)
  const weights = loop.map((_, i): Weight => (isSeen[i] ? (isOuter[i] ? "bold" : "medium") : null))
  for (const run of runsOf(weights, true)) {
    if (run.value !== "medium") continue
    const { lengthMm, dropMm } = leastInner[name]
    const isLong = (run.to - run.from) * spacingMm >= lengthMm
    const isDeep = Math.max(...stretch(drops, run)) >= dropMm
    const middle = headPlace(loop[((run.from + run.to) >> 1) % loop.length], scene)
    if (isLong && isDeep && !isSpare(middle, scene.view)) continue
    for (let i = run.from; i <= run.to; i++) weights[i % loop.length] = null
  }
  return withoutSpecks(weights, shortest)
}

/** A contour point on the unscaled head, mm. */
export const headPlace = ({ x, y, depth }: ContourPoint, { axes, view }: Scene) =>
  divide(unproject(view, viewPoint(x, y), depth), axes)

/** How far the skin behind lies below a contour point, mm; infinite against the page, below 0 if something hides the point. */
function dropBehind({ x, y, depth, outX, outY, bulge }: ContourPoint, raster: Raster) {
  if (bulge <= 0) return Number.NEGATIVE_INFINITY
  const step = raster.mmPerPixel / Math.sqrt(outX * outX + outY * outY)
  const at = (pixels: number) => depthAt(raster, x + outX * step * pixels, y + outY * step * pixels)
  // Within the pixel of the point itself its own surface may rise this far.
  if (at(0.5) > depth + 12) return Number.NEGATIVE_INFINITY
  return depth - Math.min(at(1), at(2))
}

/** Small gaps are bridged; a line stops one point short of what hides it. */
function seenPoints(drops: readonly number[], widestGap: number): boolean[] {
  const isSeen = withoutShort(
    drops.map((drop) => drop > -2.5),
    { value: false, least: widestGap, isClosed: true },
  )
  return isSeen.map((seen, i) => seen && isSeen[(i + 1) % isSeen.length] && isSeen.at(i - 1) === true)
}

function outerPoints(drops: readonly number[], shortest: number): boolean[] {
  const isOuter = drops.map((drop) => drop === Number.POSITIVE_INFINITY)
  const bridged = withoutShort(isOuter, { value: false, least: shortest, isClosed: true })
  return withoutShort(bridged, { value: true, least: shortest, isClosed: true })
}

function withoutSpecks(weights: readonly Weight[], shortest: number): Weight[] {
  const isDrawn = weights.map((weight) => weight !== null)
  const isKept = withoutShort(isDrawn, { value: true, least: shortest, isClosed: true })
  return weights.map((weight, i) => (isKept[i] ? weight : null))
}

/** Folds about the eye, and of the side of the nose that is seen whole: the features draw these. */
function isSpare([x, y, z]: Vec3, { toward }: OrthographicView) {
  const isNose = Math.abs(x) < 20 && y > 80 && z > -40 && z < 30
  const isEye = Math.abs(x) > 14 && Math.abs(x) < 50 && y > 55 && z > -8 && z < 22
  return isEye || (isNose && toward[2] < 0.35 && x * toward[0] > -1.5)
}
