import { viewPoint } from "../frames"
import { divide, type Vec3 } from "../vec3"
import { type OrthographicView, unproject } from "../views"
import { type ContourPoint, contoursOf } from "./contours"
import { neckEndMm } from "./drawnHead"
import { evenLoop } from "./evenLoop"
import type { HeadLine } from "./headLine"
import type { BodyPart } from "./headMesh"
import { depthAt, type Raster } from "./raster"
import { type Run, runsOf, withoutShort } from "./runs"
import type { SeenMesh } from "./seenMesh"

export type Scene = { axes: Vec3; view: OrthographicView; raster: Raster }

const spacingMm = 1.2
const shortest = 4 / spacingMm
const widestGap = 2.5 / spacingMm

/** A line before other skin is drawn when it is this long and the skin lies this far behind it somewhere, mm. */
const leastInner = { head: { length: 9, drop: 6 }, ear: { length: 14, drop: 3 } }

/** The visible lines along which one part of the body turns away: bold against the page, medium before skin. */
export const contourLines = (part: BodyPart, seen: SeenMesh, scene: Scene): HeadLine[] =>
  contoursOf(part.mesh, seen).flatMap((loop) => linesAlong(evenLoop(loop, spacingMm), part.name, scene))

type Weight = HeadLine["weight"] | "none"

function linesAlong(loop: ContourPoint[], name: BodyPart["name"], scene: Scene): HeadLine[] {
  const weights = withoutSpecks(withoutShallow(weightsOf(loop, scene.raster), loop, name, scene))
  const faded = weights.map((weight, i) => fadeDown(weight, headPlace(loop[i], scene)[2]))
  return runsOf(faded, true).flatMap(({ value, from, to }) => {
    if (value === "none" || to - from < 2) return []
    const next = faded[(to + 1) % loop.length]
    const points = stretch(loop, { from, to: next === "none" ? to : to + 1 })
    const part = partAt(name, headPlace(points[points.length >> 1], scene))
    return [{ part, weight: value, path: points.map(({ x, y }) => viewPoint(x, y)) }]
  })
}

const stretch = <T>(list: readonly T[], { from, to }: Run): T[] =>
  Array.from({ length: to - from + 1 }, (_, i) => list[(from + i) % list.length])

function weightsOf(loop: ContourPoint[], raster: Raster): { weight: Weight; drop: number }[] {
  const drops = loop.map((point) => dropBehind(point, raster))
  const isSeen = withoutShort(
    drops.map((drop) => drop > -2.5),
    false,
    widestGap,
    true,
  )
  const isOuter = withoutShort(
    withoutShort(
      drops.map((drop) => drop === Number.POSITIVE_INFINITY),
      false,
      shortest,
      true,
    ),
    true,
    shortest,
    true,
  )
  return drops.map((drop, i) => ({ drop, weight: isSeen[i] ? (isOuter[i] ? "bold" : "medium") : "none" }))
}

/** How far the surface behind lies below a contour point, mm; infinite against the page, below 0 if something hides it. */
function dropBehind({ x, y, depth, outX, outY, bulge }: ContourPoint, raster: Raster) {
  if (bulge <= 0) return Number.NEGATIVE_INFINITY
  const step = raster.mmPerPixel / Math.hypot(outX, outY)
  const at = (pixels: number) => depthAt(raster, x + outX * step * pixels, y + outY * step * pixels)
  // The surface itself may rise this far within the pixel the point lies in.
  if (at(0.5) > depth + 12) return Number.NEGATIVE_INFINITY
  return depth - Math.min(at(1), at(2))
}

/** Leaves out inner lines that are short, or before a shallow fold, or on the side of the nose that is seen whole. */
function withoutShallow(
  points: { weight: Weight; drop: number }[],
  loop: ContourPoint[],
  name: BodyPart["name"],
  scene: Scene,
): Weight[] {
  const weights = points.map(({ weight }) => weight)
  const least = leastInner[name]
  for (const run of runsOf(weights, true)) {
    if (run.value !== "medium") continue
    const most = Math.max(...stretch(points, run).map(({ drop }) => drop))
    const isLong = (run.to - run.from) * spacingMm >= least.length
    const middle = headPlace(loop[((run.from + run.to) >> 1) % loop.length], scene)
    if (isLong && most >= least.drop && !isSpare(middle, scene.view)) continue
    for (let i = run.from; i <= run.to; i++) weights[i % loop.length] = "none"
  }
  return weights
}

/** Nose lines of the side that is seen whole, and folds about the eye, which the features draw. */
function isSpare([x, y, z]: Vec3, { toward }: OrthographicView) {
  const isNose = Math.abs(x) < 20 && y > 80 && z > -40 && z < 30
  const isEye = Math.abs(x) > 14 && Math.abs(x) < 50 && y > 55 && z > -8 && z < 22
  return isEye || (isNose && toward[2] < 0.35 && x * toward[0] > -1.5)
}

function withoutSpecks(weights: Weight[]): Weight[] {
  const isDrawn = weights.map((weight) => weight !== "none")
  const isKept = withoutShort(isDrawn, true, shortest, true)
  return weights.map((weight, i) => (isKept[i] ? weight : "none"))
}

const headPlace = ({ x, y, depth }: ContourPoint, { axes, view }: Scene) =>
  divide(unproject(view, viewPoint(x, y), depth), axes)

/** The neck's lines grow thin before they end. */
function fadeDown(weight: Weight, z: number): Weight {
  if (weight === "none" || z < neckEndMm + 8) return "none"
  if (z < neckEndMm + 18) return "fine"
  return z < neckEndMm + 30 && weight === "bold" ? "medium" : weight
}

function partAt(name: BodyPart["name"], [x, y, z]: Vec3): HeadLine["part"] {
  if (name === "ear") return "ear"
  if (z < -100) return "neck"
  return Math.abs(x) < 25 && y > 90 && z > -40 && z < 20 ? "nose" : "outline"
}
