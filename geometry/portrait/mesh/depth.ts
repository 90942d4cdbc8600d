import type { Vec3 } from "../../surface/vec3"
import { depthToward, type OrthographicView, project } from "../../surface/views"
import { farthestAround, type Raster } from "./raster"

/** What a view of the head hides. */
export type DepthMap = {
  /** Whether head or ear lies more than `marginMm` nearer the viewer than a place of the head frame, mm. */
  hides(point: Vec3, marginMm?: number): boolean
}

/** The farthest of the pixels round a place decides, so that a place at the head's edge is not hidden by its own slope. */
export const depthMapOf = (raster: Raster, view: OrthographicView): DepthMap => ({
  hides(point, marginMm = 3) {
    const [x, y] = project(view, point)
    return farthestAround(raster, x, y) > depthToward(view, point) + marginMm
  },
})
