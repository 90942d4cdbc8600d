import type { ViewPoint } from "../../../geometry/frames"
import { makeHeadFromAxes } from "../../../geometry/head/head"
import { drawHead } from "../../../geometry/head/outline"
import { fixedViews } from "../../../geometry/views"
import type { Technique } from "../../../presets/techniques/technique"
import { techniqueSections } from "../../plan/edits/layTechnique"
import { inks } from "../../plan/inks"
import type { Mark } from "../../plan/mark"
import { bandRing, hairlineMarks, planMarks, type Scene } from "../../plan/marks"
import { newPlan } from "../../plan/newPlan"
import type { Plan } from "../../plan/schema"

/** A technique drawn from itself on the unscaled head: paths with their paint, mm of the page, y down. */
export type TechniquePicture = { viewBox: string; paths: readonly PaintedPath[] }
export type PaintedPath = {
  d: string
  fill: string
  fillOpacity: number
  stroke: string
  strokeWidth: number
  strokeDasharray?: string
}

const views = {
  front: "-88 -132 176 200",
  right: "-104 -132 208 200",
  top: "-88 -116 176 214",
  back: "-88 -132 176 200",
}
type PictureView = keyof typeof views

const pictures = new Map<string, TechniquePicture>()

/** The picture of a technique, in the view that shows the most of it; drawn once. */
export function techniquePicture(technique: Technique): TechniquePicture {
  const picture = pictures.get(technique.id) ?? drawPicture(technique)
  pictures.set(technique.id, picture)
  return picture
}

function drawPicture(technique: Technique): TechniquePicture {
  const blank = newPlan(new Date(0))
  const plan: Plan = { ...blank, sections: techniqueSections(technique, blank) }
  const seen = (Object.keys(views) as PictureView[]).map((name) => ({ name, ...scene(name) }))
  const shown = seen.reduce((best, each) =>
    showing(plan, each.scene) > 1.15 * showing(plan, best.scene) ? each : best,
  )
  const marks = [...shown.head, ...hairlineMarks(shown.scene), ...planMarks(plan, shown.scene)]
  return { viewBox: views[shown.name], paths: marks.flatMap(painted) }
}

function scene(name: PictureView): { scene: Scene; head: Mark[] } {
  const head = makeHeadFromAxes([1, 1, 1], "round")
  const view = fixedViews[name]
  const { lines, depth } = drawHead(head.axes, view)
  return {
    scene: { head, view, hides: (point) => depth.hides(point) },
    head: lines
      .filter(({ part }) => part !== "neck" && part !== "jaw")
      .map(({ path }): Mark => ({ kind: "line", path, ink: "head-fine" })),
  }
}

/** How much of a plan a page shows, as the length of all rings, mm. */
const showing = (plan: Plan, view: Scene) =>
  plan.sections
    .flatMap((section) => bandRing(section, plan, view))
    .reduce((sum, ring) => sum + lengthOf(ring), 0)

const lengthOf = (path: readonly ViewPoint[]) =>
  path.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - path[i][0], y - path[i][1]), 0)

function painted(mark: Mark): PaintedPath[] {
  if (mark.kind === "dot" || mark.kind === "label") return []
  const {
    color,
    weightPt,
    opacity = 1,
    dashPt,
  }: { color: string; weightPt: number; opacity?: number; dashPt?: readonly number[] } = inks[mark.ink]
  const paths = mark.kind === "hatch" ? mark.segments : [mark.path]
  const isClosed = mark.kind === "area" || (mark.kind === "line" && mark.closed === true)
  const d = paths.map((path) => pathData(path) + (isClosed ? "Z" : "")).join("")
  return [
    mark.kind === "area"
      ? { d, fill: color, fillOpacity: opacity, stroke: "none", strokeWidth: 0 }
      : {
          d,
          fill: "none",
          fillOpacity: 1,
          stroke: color,
          strokeWidth: weightPt,
          ...(dashPt ? { strokeDasharray: dashPt.join(" ") } : {}),
        },
  ]
}

const pathData = (path: readonly ViewPoint[]) =>
  `M${path.map(([x, y]) => `${tenth(x)} ${tenth(-y)}`).join("L")}`
const tenth = (mm: number) => Math.round(mm * 10) / 10
