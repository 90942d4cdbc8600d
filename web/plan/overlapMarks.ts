import type { SurfacePoint, ViewPoint } from "../../geometry/frames"
import { toView } from "../../geometry/views"
import { doubledHair } from "./doubledHair"
import type { Mark } from "./mark"
import { isSeen, type Scene, seenPaths } from "./marks"
import type { Overlap } from "./overlaps"

const drawnIn = new WeakMap<Scene, WeakMap<Overlap, readonly Mark[]>>()

/** Hair that two sections take, on one page: an outline and a cross-hatch, told without colour. */
export const overlapMarks = (overlaps: readonly Overlap[], scene: Scene): Mark[] =>
  overlaps.flatMap((overlap) => marksOf(overlap, scene))

function marksOf(overlap: Overlap, scene: Scene): readonly Mark[] {
  const ofScene = drawnIn.get(scene) ?? new WeakMap<Overlap, readonly Mark[]>()
  drawnIn.set(scene, ofScene)
  const known = ofScene.get(overlap)
  if (known) return known
  const fresh = drawOverlap(overlap, scene)
  ofScene.set(overlap, fresh)
  return fresh
}

function drawOverlap(overlap: Overlap, scene: Scene): Mark[] {
  const { outlines, strokes } = doubledHair(overlap, scene.head)
  const segments = strokes
    .filter((ends) => ends.every((at) => isSeen(at, scene)))
    .map(([from, to]) => [onPage(from, scene), onPage(to, scene)] as const)
  return [
    ...outlines.flatMap((outline) =>
      seenPaths([...outline, outline[0]], scene).map(
        (path): Mark => ({ kind: "line", path, ink: "twice-edge" }),
      ),
    ),
    ...(segments.length > 0 ? [{ kind: "hatch", segments, ink: "twice-hatch" } satisfies Mark] : []),
  ]
}

/** The middle of what can be seen of an overlap on a page; null when nothing can. */
export function overlapMiddle(overlap: Overlap, scene: Scene): ViewPoint | null {
  const seen = doubledHair(overlap, scene.head).strokes.filter(([from]) => isSeen(from, scene))
  return seen.length > 0 ? onPage(seen[seen.length >> 1][0], scene) : null
}

const onPage = (at: SurfacePoint, { view, head }: Scene) => toView(view, head.surface, at)
