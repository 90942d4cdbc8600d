import type { ViewPoint } from "../../../geometry/surface/frames"
import { inks } from "../../drawing/inks"
import type { Mark } from "../../drawing/mark"
import { pathData } from "./pathData"

export type PaintedPath = {
  d: string
  fill: string
  fillOpacity: number
  stroke: string
  strokeWidth: number
  strokeDasharray?: string
}

const unstroked = { stroke: "none", strokeWidth: 0 } as const
const dotMm = 1.7

/** A mark as a path of the page with its paint; numbers are not drawn. */
export function paintedMark(mark: Mark): PaintedPath[] {
  if (mark.kind === "label") return []
  const {
    color,
    weightPt,
    opacity = 1,
    dashPt,
  }: { color: string; weightPt: number; opacity?: number; dashPt?: readonly number[] } = inks[mark.ink]
  if (mark.kind === "dot") return [{ ...unstroked, d: dotPath(mark.at), fill: color, fillOpacity: opacity }]
  const paths = mark.kind === "hatch" ? mark.segments : [mark.path]
  const isClosed = mark.kind === "area" || (mark.kind === "line" && mark.closed === true)
  const d = paths.map((path) => pathData(path) + (isClosed ? "Z" : "")).join("")
  return [
    mark.kind === "area"
      ? { ...unstroked, d, fill: color, fillOpacity: opacity }
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

const dotPath = ([x, y]: ViewPoint) =>
  `M${x - dotMm} ${-y}a${dotMm} ${dotMm} 0 1 0 ${2 * dotMm} 0a${dotMm} ${dotMm} 0 1 0 ${-2 * dotMm} 0Z`
