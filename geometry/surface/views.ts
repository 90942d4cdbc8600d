import {
  type HeadPoint,
  headPoint,
  type SurfacePoint,
  surfacePoint,
  type ViewPoint,
  viewPoint,
} from "./frames"
import { firstHit, normalAt, type Surface } from "./surface"
import { add, cross, dot, scale, type Vec3 } from "./vec3"

/**
 * How the head is looked at. An orthographic view has a page (right, up) and a viewer (toward), unit vectors
 * of the head frame; the unrolled view lays the scalp map flat, with `radiusMm` mm to the radian.
 */
export type View = OrthographicView | UnrolledView
export type OrthographicView = { kind: "orthographic"; right: Vec3; up: Vec3; toward: Vec3 }
export type UnrolledView = { kind: "unrolled"; radiusMm: number }

export const viewNames = ["front", "left", "right", "back", "top", "turned", "unrolled"] as const
export type ViewName = (typeof viewNames)[number]

const orthographic = (right: Vec3, up: Vec3): OrthographicView => ({
  kind: "orthographic",
  right,
  up,
  toward: cross(right, up),
})

/**
 * The views that never turn. Front is seen by someone facing the client, whose right is on the page's left.
 * Top is seen by someone standing behind the client: the face is at the top of the page.
 */
export const fixedViews = {
  front: orthographic([-1, 0, 0], [0, 0, 1]),
  left: orthographic([0, -1, 0], [0, 0, 1]),
  right: orthographic([0, 1, 0], [0, 0, 1]),
  back: orthographic([1, 0, 0], [0, 0, 1]),
  top: orthographic([1, 0, 0], [0, 1, 0]),
  unrolled: { kind: "unrolled", radiusMm: 78 },
} as const satisfies Record<Exclude<ViewName, "turned">, View>

/**
 * The turntable: the viewer walks `yaw` radians round the head (0 in front, positive toward the client's
 * right) and rises `pitch` radians above it.
 */
export function turnedView(yaw: number, pitch: number): OrthographicView {
  const right: Vec3 = [-Math.cos(yaw), Math.sin(yaw), 0]
  const toward: Vec3 = [Math.sin(yaw) * Math.cos(pitch), Math.cos(yaw) * Math.cos(pitch), Math.sin(pitch)]
  return { kind: "orthographic", right, up: cross(toward, right), toward }
}

/** A head point on an orthographic page, mm. */
export const project = (view: OrthographicView, point: Vec3): ViewPoint =>
  viewPoint(dot(view.right, point), dot(view.up, point))

/** A scalp point on any page, mm at life size (at the middle of the unrolled map). */
export function toView(view: View, surface: Surface, at: SurfacePoint): ViewPoint {
  return view.kind === "orthographic"
    ? project(view, surface.pointAt(at))
    : viewPoint(at[0] * view.radiusMm, at[1] * view.radiusMm)
}

/** The scalp point under a point of the page, or null where the page shows none. */
export function fromView(view: View, surface: Surface, [x, y]: ViewPoint): SurfacePoint | null {
  if (view.kind === "unrolled") return surfacePoint(x / view.radiusMm, y / view.radiusMm)
  const origin = add(add(scale(view.right, x), scale(view.up, y)), scale(view.toward, 1000))
  return firstHit(surface, origin, scale(view.toward, -1))
}

/** Cosine between the surface and the viewer: above 0 the place faces the viewer. Always 1 on the unrolled map. */
export const facing = (view: View, surface: Surface, at: SurfacePoint): number =>
  view.kind === "unrolled" ? 1 : dot(normalAt(surface, at), view.toward)

/** How far a head point lies toward the viewer, mm. */
export const depthToward = (view: OrthographicView, point: HeadPoint | Vec3): number =>
  dot(view.toward, point)

/** A point of the page put back in space, `depthMm` toward the viewer. */
export const unproject = (view: OrthographicView, [x, y]: ViewPoint, depthMm: number): HeadPoint =>
  headPoint(...add(add(scale(view.right, x), scale(view.up, y)), scale(view.toward, depthMm)))
