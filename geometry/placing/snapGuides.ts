import { partingBehind } from "../parting/parting"
import type { Head } from "../scalp/head"
import type { Band } from "../section/section"
import { extendPath } from "../surface/extendPath"
import { type Nearest, nearestOnPath } from "../surface/nearestOnPath"
import { type MeasuredPath, measurePath, type SurfacePath } from "../surface/surfacePath"
import type { Vec3 } from "../surface/vec3"

/** A line that a stroke can keep to, how near a point of the head frame lies to it, and the line it is parallel to. */
export type SnapGuide = { line: MeasuredPath; nearest: (point: Vec3) => Nearest; shown: SurfacePath }

export type NextBand = { taken: Band["taken"]; depthMm: number; gapMm: number }

/** A guide goes on past the parting it is parallel to, mm. */
const pastMm = 30

/** The lines behind and in front of a band on which the next one would lie with just the gap of hair between, mm. */
export function snapGuides(head: Head, last: Band, next: NextBand): SnapGuide[] {
  const deepMm = Math.max(last.depthMm.start, last.depthMm.end)
  const behindMm =
    (last.taken === "behind" ? deepMm : 0) + next.gapMm + (next.taken === "front" ? next.depthMm : 0)
  const beforeMm =
    (last.taken === "front" ? deepMm : 0) + next.gapMm + (next.taken === "behind" ? next.depthMm : 0)
  return [behindMm, -beforeMm].flatMap((mm) => {
    const made = partingBehind(head, last.parting, mm)
    if ("refused" in made) return []
    const line = measurePath(head.surface, extendPath(head.surface, made.parting, pastMm, pastMm))
    return [{ line, nearest: nearestOnPath(head.surface, line), shown: last.parting }]
  })
}
