import type { Section } from "../../geometry/section/section"
import type { SurfacePoint, ViewPoint } from "../../geometry/surface/frames"
import { toView } from "../../geometry/surface/views"
import { type OverlapArea, overlapArea } from "../core/figures/overlapArea"
import { type Overlap, takersBefore } from "../core/figures/overlaps"
import type { Mark } from "./mark"
import { isSeen, type Scene, seenPaths } from "./marks"

type Known<T> = { before: readonly Section[]; value: T }
const hairOf = new WeakMap<Section, Known<OverlapArea>>()
const drawnIn = new WeakMap<Scene, WeakMap<Section, Known<readonly Mark[]>>>()

/** Hair that sections take from each other, on one page: an outline and a cross-hatch, told without colour. */
export const overlapMarks = (overlaps: readonly Overlap[], scene: Scene): Mark[] => {
  const ofScene = drawnIn.get(scene) ?? new WeakMap<Section, Known<readonly Mark[]>>()
  drawnIn.set(scene, ofScene)
  return [...takersBefore(overlaps)].flatMap(([section, before]) =>
    remembered(ofScene, section, before, () => drawHair(hairTwice(section, before, scene), scene)),
  )
}

/** The middle of what can be seen on a page of the hair of each section that others have taken before it. */
export const overlapMiddles = (overlaps: readonly Overlap[], scene: Scene): ViewPoint[] =>
  [...takersBefore(overlaps)].flatMap(([section, before]) => {
    const seen = hairTwice(section, before, scene).strokes.filter(([from]) => isSeen(from, scene))
    return seen.length > 0 ? [onPage(seen[seen.length >> 1][0], scene)] : []
  })

const hairTwice = (section: Section, before: readonly Section[], { head }: Scene) =>
  remembered(hairOf, section, before, () => overlapArea(section, before, head))

function drawHair({ outlines, strokes }: OverlapArea, scene: Scene): Mark[] {
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

const onPage = (at: SurfacePoint, { view, head }: Scene) => toView(view, head.surface, at)

/** Made anew only when other sections have taken the hair. */
function remembered<T>(
  map: WeakMap<Section, Known<T>>,
  section: Section,
  before: readonly Section[],
  make: () => T,
): T {
  const known = map.get(section)
  if (known && known.before.length === before.length && known.before.every((each, i) => each === before[i]))
    return known.value
  const value = make()
  map.set(section, { before, value })
  return value
}
