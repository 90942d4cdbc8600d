import { type SurfacePoint, surfacePoint } from "../../geometry/frames"
import type { Head } from "../../geometry/head/head"
import { lineAt } from "../../geometry/section/bandSpans"
import { type Stretch, sharedStretches } from "../../geometry/section/overlap"
import type { Overlap } from "./overlaps"

/** Hair that two sections take, as lines on the scalp map: closed outlines, and the strokes of a cross-hatch in them. */
export type DoubledHair = {
  outlines: readonly (readonly SurfacePoint[])[]
  strokes: readonly (readonly [SurfacePoint, SurfacePoint])[]
}

const remembered = new WeakMap<Overlap, DoubledHair>()

/** Drawn once for as long as the overlap stays. */
export function doubledHair(overlap: Overlap, head: Head): DoubledHair {
  const known = remembered.get(overlap)
  if (known) return known
  const patches = patchesOf(sharedStretches(overlap.earlier, overlap.later, head))
  const fresh = {
    outlines: patches.map(outlineOf),
    strokes: patches.flatMap((patch) => [...slantedStrokes(patch, 1), ...slantedStrokes(patch, -1)]),
  }
  remembered.set(overlap, fresh)
  return fresh
}

/** Stretches that lie on each other line after line. */
function patchesOf(stretches: readonly Stretch[]): Stretch[][] {
  const patches: Stretch[][] = []
  for (const stretch of stretches) {
    const under = patches.find((patch) => isNext(patch[patch.length - 1], stretch))
    if (under) under.push(stretch)
    else patches.push([stretch])
  }
  return patches.filter((patch) => patch.length > 1)
}

const isNext = (below: Stretch, { line, fromU, toU }: Stretch) =>
  below.line === line - 1 && below.fromU < toU && fromU < below.toU

const outlineOf = (patch: readonly Stretch[]) => [
  ...patch.map(({ line, fromU }) => surfacePoint(fromU, lineAt(line))),
  ...patch.map(({ line, toU }) => surfacePoint(toU, lineAt(line))).reverse(),
]

/** Between strokes, radians of the map: near two millimetres, closer than any hatch of a mix. */
const strokeGap = 0.026

/** Strokes that climb to one side: of each, the lines of the patch that it runs through. */
function slantedStrokes(patch: readonly Stretch[], slant: 1 | -1): (readonly [SurfacePoint, SurfacePoint])[] {
  const ends = new Map<number, [Stretch, Stretch]>()
  const footOf = (u: number, line: number) => (u - slant * lineAt(line)) / strokeGap
  for (const stretch of patch)
    for (let k = Math.ceil(footOf(stretch.fromU, stretch.line)); k <= footOf(stretch.toU, stretch.line); k++)
      ends.set(k, [ends.get(k)?.[0] ?? stretch, stretch])
  return [...ends].map(([k, [first, last]]) => {
    const at = ({ line }: Stretch) => surfacePoint(k * strokeGap + slant * lineAt(line), lineAt(line))
    return [at(first), at(last)] as const
  })
}
