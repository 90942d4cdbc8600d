import { drawHead } from "../../../../geometry/portrait/outline"
import type { HairlineForm } from "../../../../geometry/scalp/hairlineLandmarks"
import { type Head, makeHeadFromAxes } from "../../../../geometry/scalp/head"
import type { SurfacePoint, ViewPoint } from "../../../../geometry/surface/frames"
import { leftOf } from "../../../../geometry/surface/surfacePath"
import { walk } from "../../../../geometry/surface/surfaceWalk"
import { facing, fixedViews, toView } from "../../../../geometry/surface/views"
import { pathData } from "../../fields/pathData"

/** A face from in front as path data, mm of the page, and the hair growing back from its hairline. */
export type HairlinePicture = { viewBox: string; face: string; hair: string }

const pictures = new Map<HairlineForm, HairlinePicture>()

/** The picture of a hairline on the unscaled head, drawn once. */
export function hairlinePicture(form: HairlineForm): HairlinePicture {
  const picture = pictures.get(form) ?? drawPicture(makeHeadFromAxes([1, 1, 1], form))
  pictures.set(form, picture)
  return picture
}

const { front } = fixedViews
const strokeStepMm = 4
const strokeMm = [11, 16, 13, 18]

function drawPicture(head: Head): HairlinePicture {
  const face = drawHead(head.axes, front).lines.filter(({ part }) => part !== "neck" && part !== "jaw")
  return {
    viewBox: "-84 -132 168 236",
    face: face.map(({ path }) => pathData(path)).join(""),
    hair: [hairline(head), ...hairStrokes(head)].map(pathData).join(""),
  }
}

/** The part of the hairline that is seen from in front, from the head's left to its right. */
function hairline({ surface, hairline: { pointAlong, sides } }: Head): ViewPoint[] {
  return steps(-sides.left.faceReachMm, sides.right.faceReachMm, 2)
    .map(pointAlong)
    .filter((at) => facing(front, surface, at) > 0)
    .map((at) => toView(front, surface, at))
}

/** Short lines combed back from the hairline, of uneven length as a pencil leaves them. */
function hairStrokes({ surface, hairline: { pointAlong, sides } }: Head): ViewPoint[][] {
  const roots = steps(-sides.left.faceReachMm, sides.right.faceReachMm, strokeStepMm).map(pointAlong)
  return roots.flatMap((at, i) => {
    const heading = leftOf(surface, roots, i)
    const stroke = steps(0, strokeMm[i % strokeMm.length], 3).map(
      (mm) => walk(surface, { at, heading }, -mm).at,
    )
    return stroke.every((point) => isSeen(surface, point))
      ? [stroke.map((point) => toView(front, surface, point))]
      : []
  })
}

const isSeen = (surface: Head["surface"], at: SurfacePoint) => facing(front, surface, at) > 0

function steps(from: number, to: number, step: number): number[] {
  const count = Math.max(1, Math.round((to - from) / step))
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count)
}
