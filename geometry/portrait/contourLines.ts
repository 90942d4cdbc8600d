import { viewPoint } from "../surface/frames"
import type { Vec3 } from "../surface/vec3"
import { type ContourPoint, contoursOf } from "./contours"
import { contourWeights, headPlace, type Scene, type Weight } from "./contourWeights"
import { evenLoop } from "./evenLoop"
import type { HeadLine } from "./headLine"
import type { LineMask } from "./lineMask"
import { neckEndMm } from "./mesh/drawnHead"
import type { BodyPart } from "./mesh/headMesh"
import type { SeenMesh } from "./mesh/seenMesh"
import { runsOf, stretch, withoutShort } from "./runs"

type Stroke = { name: BodyPart["name"]; points: ContourPoint[]; weights: Weight[] }

/**
 * The visible lines along which the body turns away from the viewer, page mm. Ears come first, then longer strokes
 * before shorter; a stroke leaves out what runs along one already on the page.
 */
export function contourLines(
  subjects: readonly { part: BodyPart; seen: SeenMesh }[],
  scene: Scene,
  page: LineMask,
): HeadLine[] {
  const strokes = subjects.flatMap(({ part, seen }) => strokesOf(part, seen, scene))
  const rank = ({ name, points }: Stroke) => (name === "ear" ? 1e6 : 0) + points.length
  strokes.sort((a, b) => rank(b) - rank(a))
  return strokes.flatMap((stroke) => {
    const rest = offInk(stroke, page, scene.spacingMm)
    page.add(stroke.points)
    return linesAlong(rest, scene)
  })
}

/** The stretches of each contour that are drawn. */
function strokesOf({ mesh, name }: BodyPart, seen: SeenMesh, scene: Scene): Stroke[] {
  return contoursOf(mesh, seen).flatMap((contour) => {
    const loop = evenLoop(contour, scene.spacingMm)
    const weights = contourWeights(loop, name, scene).map((weight, i) =>
      fadeDown(weight, headPlace(loop[i], scene)[2]),
    )
    const isDrawn = weights.map((weight) => weight !== null)
    return runsOf(isDrawn, true)
      .filter(({ value, from, to }) => value && to - from > 2)
      .map((run) => {
        const isWhole = run.to - run.from === loop.length - 1
        const whole = isWhole ? { ...run, to: run.to + 1 } : run
        return { name, points: stretch(loop, whole), weights: stretch(weights, whole) }
      })
  })
}

/** Strokes that run along each other for less only meet; what is left between is not drawn when it is shorter, mm. */
const meetingMm = 4.8
const restMm = 6

/** A stroke with no weight where it runs along another; where it only meets one it stays. */
function offInk(stroke: Stroke, page: LineMask, spacingMm: number): Stroke {
  const isFree = stroke.points.map((point) => !page.isInked(point))
  const meeting = withoutShort(isFree, { value: false, least: meetingMm / spacingMm, isClosed: false })
  const isKept = withoutShort(meeting, { value: true, least: restMm / spacingMm, isClosed: false })
  return { ...stroke, weights: stroke.weights.map((weight, i) => (isKept[i] ? weight : null)) }
}

function linesAlong({ name, points, weights }: Stroke, scene: Scene): HeadLine[] {
  return runsOf(weights, false).flatMap(({ value: weight, from, to }) => {
    if (weight === null) return []
    // A line goes on to the first point of the next, so that a change of weight leaves no gap.
    const isFollowed = to + 1 < points.length && weights[to + 1] !== null
    const along = stretch(points, { from, to: isFollowed ? to + 1 : to })
    if (along.length < 2) return []
    const part = partAt(name, headPlace(along[along.length >> 1], scene))
    return [{ part, weight, path: along.map(({ x, y }) => viewPoint(x, y)) }]
  })
}

/** The neck's lines grow thin before they end. */
function fadeDown(weight: Weight, z: number): Weight {
  if (weight === null || z < neckEndMm + 8) return null
  if (z < neckEndMm + 18) return "fine"
  return z < neckEndMm + 30 && weight === "bold" ? "medium" : weight
}

function partAt(name: BodyPart["name"], [x, y, z]: Vec3): HeadLine["part"] {
  if (name === "ear") return "ear"
  if (z < -100) return "neck"
  return Math.abs(x) < 25 && y > 90 && z > -40 && z < 20 ? "nose" : "outline"
}
