import type { Surface } from "./surface"
import { type Walker, walk } from "./surfaceWalk"
import type { Vec3 } from "./vec3"

/** A walker on its way back over the head, and how far along the first line it set out, mm. */
export type Rib = Walker & { homeMm: number }

/** The straight way between two places is shorter than the way over the head, by its cube over 24 squares of the radius; 60 mm is the least. */
const chordMm = (mm: number) => mm - mm ** 3 / (24 * 60 ** 2)
const slackMm = 0.2

/**
 * Ribs walked on to their left by so many mm, negative to their right. Those that came too near to the line they left,
 * inside a bend tighter than the way, are given up; `apartMm` is the straight way from a point to that line.
 */
export function walkRibs(
  surface: Surface,
  ribs: readonly Rib[],
  mm: number,
  apartMm: (point: Vec3) => number,
): Rib[] {
  const leastMm = chordMm(Math.abs(mm)) - slackMm
  return ribs
    .map((rib) => ({ ...walk(surface, rib, mm), homeMm: rib.homeMm }))
    .filter(({ at }) => apartMm(surface.pointAt(at)) >= leastMm)
}
