import type { Head } from "../../../../geometry/scalp/head"
import { bandEdges } from "../../../../geometry/section/bandEdges"
import type { Section } from "../../../../geometry/section/section"

/** From where to where along the hairline, mm from centre front. */
export type Run = { fromMm: number; toMm: number }

/** Where a section lies along the hairline, and the hair that it leaves in front of it, mm. */
export type Fronted = Run & { section: Section; roomMm: number }

export function frontOf(section: Section, head: Head): Fronted {
  const places = bandEdges(section, head).front.map(head.hairline.coordinates)
  const along = places.map(({ alongMm }) => alongMm)
  return {
    section,
    fromMm: Math.min(...along),
    toMm: Math.max(...along),
    roomMm: Math.min(...places.map(({ behindMm }) => behindMm)),
  }
}

export const overlaps = (a: Run, b: Run) => a.fromMm < b.toMm && b.fromMm < a.toMm

/** What is left of a run beside others, as long as it is worth a parting of its own. */
export function runsBeside(run: Run, others: readonly Run[], shortestMm: number): readonly Run[] {
  const left = others.reduce<readonly Run[]>(
    (runs, other) =>
      runs.flatMap((each) =>
        overlaps(each, other)
          ? [
              { fromMm: each.fromMm, toMm: other.fromMm },
              { fromMm: other.toMm, toMm: each.toMm },
            ]
          : [each],
      ),
    [run],
  )
  return left.filter(({ fromMm, toMm }) => toMm - fromMm >= shortestMm)
}
