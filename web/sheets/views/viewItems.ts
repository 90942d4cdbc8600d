import type { Pair, ViewPoint } from "../../../geometry/surface/frames"
import { type Ink, type InkName, inks } from "../../drawing/inks"
import type { Mark } from "../../drawing/mark"
import type { AreaItem, HatchItem, LinesItem } from "../pens/page"

/** From a point of the view (mm at life size, y up) to a point of the block (mm, y down). */
export type ToPaper = (at: ViewPoint) => Pair

/** Marks as items: tones first, so that no line is lost under one. Labels are set apart, see viewLabels.ts. */
export function markItems(
  marks: readonly Mark[],
  toPaper: ToPaper,
): { tones: AreaItem[]; lines: (LinesItem | HatchItem)[] } {
  const tones: AreaItem[] = []
  const lines: (LinesItem | HatchItem)[] = []
  for (const mark of marks) {
    if (mark.kind === "area")
      tones.push({ kind: "area", path: mark.path.map(toPaper), ink: flatColor(inks[mark.ink]) })
    if (mark.kind === "line")
      lines.push({
        kind: "lines",
        paths: [mark.path.map(toPaper)],
        closed: mark.closed === true,
        ...pen(mark.ink),
      })
    if (mark.kind === "hatch")
      lines.push({
        kind: "hatch",
        segments: mark.segments.map(([from, to]) => [toPaper(from), toPaper(to)] as const),
        ...pen(mark.ink),
      })
  }
  return { tones, lines }
}

export function pen(name: InkName) {
  const { color, weightPt, dashPt = [] }: Ink = inks[name]
  return { ink: color, weightPt, dashPt }
}

/** A see-through ink as the solid colour it makes on white paper, so that the printer need not blend. */
export function flatColor({ color, opacity = 1 }: Ink): string {
  const channels = [1, 3, 5].map((i) => Number.parseInt(color.slice(i, i + 2), 16))
  const blended = channels.map((channel) => Math.round(255 - (255 - channel) * opacity))
  return `#${blended.map((channel) => channel.toString(16).padStart(2, "0")).join("")}`
}
