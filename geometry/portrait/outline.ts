import type { Vec3 } from "../surface/vec3"
import type { OrthographicView } from "../surface/views"
import { contourLines } from "./contourLines"
import { featureLines } from "./featureLines"
import { features } from "./features"
import type { HeadLine } from "./headLine"
import { blankMask } from "./lineMask"
import { type DepthMap, depthMapOf } from "./mesh/depth"
import { bodyParts } from "./mesh/headMesh"
import { mirroredRaster, rasterOf } from "./mesh/raster"
import { seePoints } from "./mesh/seenMesh"
import { type Shade, shadeOf, tonesOf } from "./mesh/shading"
import { isSymmetricView, mirroredLine, mirroredView, symmetricLines } from "./mirror"

/** One view of the head: its pen lines and its wash in page mm at life size, and what hides what. */
export type HeadDrawing = { lines: HeadLine[]; depth: DepthMap; shade: Shade }

/**
 * Draws the head scaled by `axes` as a view sees it; depth and wash have pixels of `mmPerPixel`. Everything is worked
 * out from the client's right, so that views from left and right, and both halves of a symmetric page, agree exactly.
 */
export function drawHead(axes: Vec3, view: OrthographicView, mmPerPixel = 1.5): HeadDrawing {
  const isFromLeft = view.toward[0] < 0
  const { lines, raster } = drawFromRight(axes, isFromLeft ? mirroredView(view) : view, mmPerPixel)
  const page = isFromLeft ? mirroredRaster(raster) : raster
  return {
    lines: isFromLeft ? lines.map(mirroredLine) : isSymmetricView(view) ? symmetricLines(lines) : lines,
    depth: depthMapOf(page, view),
    shade: shadeOf(page),
  }
}

/** Contours of a coarser page have fewer points, so that a turning head is drawn sooner; none has them closer than this. */
const finestMm = 1.2

function drawFromRight(axes: Vec3, view: OrthographicView, mmPerPixel: number) {
  const subjects = bodyParts().map((part) => {
    const seen = seePoints(part.mesh, axes, view)
    return { part, mesh: part.mesh, seen, tones: tonesOf(part, seen) }
  })
  const raster = rasterOf(subjects, mmPerPixel)
  const scene = { axes, view, raster, spacingMm: Math.max(finestMm, 0.8 * mmPerPixel) }
  const page = blankMask(raster, 1)
  const contours = contourLines(subjects, scene, page)
  const lines = [...contours, ...features().flatMap((feature) => featureLines(feature, scene, page))]
  return { lines, raster }
}
