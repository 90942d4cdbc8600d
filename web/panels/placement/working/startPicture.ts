import { makeHeadFromAxes } from "../../../../geometry/scalp/head"
import type { SurfacePath } from "../../../../geometry/surface/surfacePath"
import { fitStartLine } from "../../../../geometry/working/workingSectionStart"
import type { WorkingStart } from "../../../../presets/placement/workingSections"

/** A start drawn from itself on the scalp of the unscaled head laid flat, the face at the top: hundredths of a radian, y down. */
export type StartPicture = { viewBox: string; hairline: string; lines: readonly string[] }

const viewBox = "-210 -150 420 365"

const pictures = new Map<string, StartPicture>()

/** The picture of a start, drawn once. */
export function startPicture(start: WorkingStart): StartPicture {
  const picture = pictures.get(start.id) ?? drawPicture(start)
  pictures.set(start.id, picture)
  return picture
}

function drawPicture({ lines }: WorkingStart): StartPicture {
  const head = makeHeadFromAxes([1, 1, 1], "round")
  const made = lines.map((line) => fitStartLine(head, line))
  return {
    viewBox,
    hairline: `${pathData(head.hairline.points)}Z`,
    lines: made.flatMap((parted) => ("parting" in parted ? [pathData(parted.parting)] : [])),
  }
}

const pathData = (path: SurfacePath) =>
  `M${path.map(([u, v]) => `${Math.round(100 * u)} ${Math.round(-100 * v)}`).join("L")}`
