import { cleanParting } from "../parting/parting"
import type { Head } from "../scalp/head"
import type { Band } from "../section/section"
import { nearestOnPath } from "../surface/nearestOnPath"
import { type Rib, walkRibs } from "../surface/ribs"
import { lengthMm, measurePath, type SurfacePath } from "../surface/surfacePath"
import { type StackStart, type StackWay, stackStart } from "./stackStart"

/** The partings behind a band, the nearest first: found when asked for and kept, null where the head has no room, and ever after. */
export type Stack = { partingAt(row: number): SurfacePath | null }

/**
 * The partings of a stack: each lies everywhere at the same distance from the one before, since every point of the
 * first line walks straight back over the scalp, and one that comes too near to the last parting is left out.
 */
export function makeStack(head: Head, first: Band, way: StackWay): Stack {
  const start = stackStart(head, first, way)
  const partings: (SurfacePath | null)[] = []
  let ribs = start.ribs
  return {
    partingAt(row) {
      while (partings.length <= row && partings.at(-1) !== null) {
        const index = partings.length
        ribs = stepBack(head, ribs, start.side * stepMm(first, way, start, index))
        partings.push(partingOf(head, ribs, way, start.lengthMm, index))
      }
      return partings[row] ?? null
    },
  }
}

/** From one parting to the next, mm: the gap, and the band that lies between the two. */
function stepMm(first: Band, { gapMm, depthsMm }: StackWay, { takesAhead }: StackStart, row: number): number {
  const between = takesAhead ? row - 1 : row
  const firstMm = Math.max(first.depthMm.start, first.depthMm.end)
  return gapMm + (between < 0 ? firstMm : depthsMm[between % depthsMm.length])
}

function stepBack({ surface }: Head, ribs: readonly Rib[], mm: number): Rib[] {
  if (ribs.length < 2) return []
  const line = measurePath(
    surface,
    ribs.map(({ at }) => at),
  )
  const nearest = nearestOnPath(surface, line)
  return walkRibs(surface, ribs, mm, (point) => nearest(point).chordMm)
}

function partingOf(
  head: Head,
  ribs: readonly Rib[],
  way: StackWay,
  runMm: number,
  row: number,
): SurfacePath | null {
  const fromMm = row % 2 === 0 ? way.shiftMm : 0
  const run = ribs.filter(({ homeMm }) => homeMm >= fromMm && homeMm <= fromMm + runMm)
  const made = cleanParting(
    head,
    run.map(({ at }) => at),
  )
  if ("refused" in made || lengthMm(head.surface, made.parting) < way.shortestMm) return null
  return made.parting
}
