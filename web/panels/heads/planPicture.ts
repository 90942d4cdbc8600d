import type { ViewPoint } from "../../../geometry/surface/frames"
import type { Plan } from "../../core/document/schema"
import { headOf } from "../../core/figures/measured"
import { type Picture, pictureOf } from "../../drawing/headDrawing"
import type { Mark } from "../../drawing/mark"
import { bandRing, hairlineMarks, planMarks } from "../../drawing/marks"
import { type PaintedPath, paintedMark } from "../fields/paintedMark"

/** A plan drawn from itself on its head, small: paths with their paint, mm of the page, y down. */
export type PlanPicture = { viewBox: string; paths: readonly PaintedPath[] }

/** Left, top, width and height of a page on the unscaled head, mm. */
const pages = {
  front: [-88, -132, 176, 200],
  right: [-104, -132, 208, 200],
  top: [-88, -116, 176, 214],
  back: [-88, -132, 176, 200],
} as const
type Page = keyof typeof pages

/** By how much a view must show more than the ones before it to be the one chosen. */
const clearlyMore = 1.15

/** The picture of a plan in the view that shows the most of it. */
export function planPicture(plan: Plan): PlanPicture {
  const { page, picture } = (Object.keys(pages) as Page[])
    .map((page) => ({ page, picture: pictureOf(headOf(plan), page) }))
    .reduce((best, each) =>
      showing(plan, each.picture) > clearlyMore * showing(plan, best.picture) ? each : best,
    )
  const face = picture.lines
    .filter(({ part }) => part !== "neck" && part !== "jaw")
    .map(({ path }): Mark => ({ kind: "line", path, ink: "head-medium" }))
  const marks = [...face, ...hairlineMarks(picture.scene), ...planMarks(plan, picture.scene)]
  const scale = Math.max(...picture.scene.head.axes)
  return {
    viewBox: pages[page].map((mm) => Math.round(mm * scale)).join(" "),
    paths: marks.flatMap(paintedMark),
  }
}

/** How much of a plan a page shows, as the length of all rings, mm. */
const showing = (plan: Plan, { scene }: Picture) =>
  plan.sections
    .flatMap((section) => bandRing(section, plan, scene))
    .reduce((sum, ring) => sum + lengthOf(ring), 0)

const lengthOf = (path: readonly ViewPoint[]) =>
  path.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - path[i][0], y - path[i][1]), 0)
