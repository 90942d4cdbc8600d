import { drawHead, type HeadDrawing } from "../../geometry/portrait/outline"
import type { Head } from "../../geometry/scalp/head"
import { fixedViews, type ViewName } from "../../geometry/surface/views"
import type { Scene } from "./marks"

/** The views that a still picture can show: those that never turn and show a head. */
export type PaperView = Exclude<ViewName, "turned" | "unrolled">

/** One head as one view shows it. */
export type Picture = { scene: Scene; lines: HeadDrawing["lines"] }

const remembered = new WeakMap<Head, Map<PaperView, Picture>>()

/** The drawing of a head in a view, made once for each head. */
export function pictureOf(head: Head, name: PaperView): Picture {
  const ofHead = remembered.get(head) ?? new Map<PaperView, Picture>()
  remembered.set(head, ofHead)
  const known = ofHead.get(name) ?? draw(head, name)
  ofHead.set(name, known)
  return known
}

function draw(head: Head, name: PaperView): Picture {
  const view = fixedViews[name]
  const { lines, depth } = drawHead(head.axes, view)
  return { lines, scene: { head, view, hides: (point) => depth.hides(point) } }
}
