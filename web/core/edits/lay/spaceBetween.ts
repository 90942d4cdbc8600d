import type { Head } from "../../../../geometry/scalp/head"
import { bandEdges } from "../../../../geometry/section/bandEdges"
import type { Section } from "../../../../geometry/section/section"
import { nearestOnPath } from "../../../../geometry/surface/nearestOnPath"
import { measurePath, type SurfacePath } from "../../../../geometry/surface/surfacePath"
import { limits } from "../../fields/limits"

/** The band between two sections: the edge it is parted along, of the one farther back, and how deep it goes from there. */
export type Space = { line: SurfacePath; depthMm: Section["depthMm"] } | { refused: "none" | "wide" }

/** Kept clear of the section in front, mm. */
const clearMm = 0.3

export function spaceBetween(front: Section, back: Section, head: Head): Space {
  const line = bandEdges(back, head).front
  const nearest = nearestOnPath(head.surface, measurePath(head.surface, bandEdges(front, head).back))
  const roomMm = line.map((at) => nearest(head.surface.pointAt(at)).chordMm - clearMm)
  const [start, end] = [roomMm[0], roomMm[roomMm.length - 1]]
  const depthAt = (i: number) => start + ((end - start) * i) / (roomMm.length - 1)
  const overMm = Math.max(0, ...roomMm.map((mm, i) => depthAt(i) - mm))
  const depthMm = { start: start - overMm, end: end - overMm }
  if (Math.min(depthMm.start, depthMm.end) < limits.depthMm.low) return { refused: "none" }
  return Math.max(depthMm.start, depthMm.end) > limits.depthMm.high ? { refused: "wide" } : { line, depthMm }
}
