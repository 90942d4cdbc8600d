import type { Vec3 } from "../vec3"
import type { OrthographicView } from "../views"
import { contourLines } from "./contourLines"
import { type DepthMap, depthMapOf } from "./depth"
import { featureLines } from "./featureLines"
import { features } from "./features"
import type { HeadLine } from "./headLine"
import { bodyParts } from "./headMesh"
import { blankPage } from "./inkedPage"
import { isSymmetricView, mirroredLine, mirroredView, symmetricLines } from "./mirror"
import { mirroredRaster, rasterOf } from "./raster"
import { seePoints } from "./seenMesh"
import { type Shade, shadeOf, tonesOf } from "./shading"

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
  const page = blankPage(raster, 1)
  const contours = contourLines(subjects, scene, page)
  const lines = [...contours, ...features().flatMap((feature) => featureLines(feature, scene, page))]
  return { lines, raster }
}
