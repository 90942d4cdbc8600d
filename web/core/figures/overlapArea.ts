import type { Head } from "../../../geometry/scalp/head"
import { type BandSpans, bandSpans, lineAt } from "../../../geometry/section/bandSpans"
import { endOfShared } from "../../../geometry/section/overlap"
import type { Section } from "../../../geometry/section/section"
import { type SurfacePoint, surfacePoint } from "../../../geometry/surface/frames"

/** A stretch of a line of constant v of the scalp map, radians. */
type Stretch = { line: number; fromU: number; toU: number }

/** Hair of a section that others have taken before it, as lines on the scalp map: closed outlines, and the strokes of a cross-hatch in them. */
export type OverlapArea = {
  outlines: readonly (readonly SurfacePoint[])[]
  strokes: readonly (readonly [SurfacePoint, SurfacePoint])[]
}

export function overlapArea(section: Section, before: readonly Section[], head: Head): OverlapArea {
  const shared = before.flatMap((each) => sharedStretches(each, section, head))
  const patches = patchesOf(joined(shared))
  return {
    outlines: patches.map(outlineOf),
    strokes: patches.flatMap((patch) => [...slantedStrokes(patch, 1), ...slantedStrokes(patch, -1)]),
  }
}

/** The stretches of the map that both bands cover, line by line. */
function sharedStretches(a: Section, b: Section, head: Head): Stretch[] {
  const [one, other] = [bandSpans(a, head), bandSpans(b, head)]
  const found: Stretch[] = []
  for (let line = Math.max(one.firstLine, other.firstLine); line < endOfShared(one, other); line++)
    for (const [fromU, toU] of stretchesOn(one, line))
      for (const [start, end] of stretchesOn(other, line))
        if (Math.max(fromU, start) < Math.min(toU, end))
          found.push({ line, fromU: Math.max(fromU, start), toU: Math.min(toU, end) })
  return found
}

function stretchesOn(
  { stretches, starts, firstLine }: BandSpans,
  line: number,
): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = []
  for (let i = starts[line - firstLine]; i + 1 < starts[line - firstLine + 1]; i += 2)
    found.push([stretches[i], stretches[i + 1]])
  return found
}

/** The stretches from line to line, those of one line that meet made one. */
function joined(stretches: readonly Stretch[]): Stretch[] {
  const inOrder = stretches.toSorted((a, b) => a.line - b.line || a.fromU - b.fromU)
  const found: Stretch[] = []
  for (const stretch of inOrder) {
    const last = found.at(-1)
    if (last && last.line === stretch.line && stretch.fromU <= last.toU)
      found[found.length - 1] = { ...last, toU: Math.max(last.toU, stretch.toU) }
    else found.push(stretch)
  }
  return found
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

/** Lines from one corner of an outline to the next: about a millimetre. */
const cornerLines = 3

function outlineOf(patch: readonly Stretch[]): SurfacePoint[] {
  const corners = patch.filter((_, i) => i % cornerLines === 0 || i === patch.length - 1)
  return [
    ...corners.map(({ line, fromU }) => surfacePoint(fromU, lineAt(line))),
    ...corners.map(({ line, toU }) => surfacePoint(toU, lineAt(line))).reverse(),
  ]
}

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
