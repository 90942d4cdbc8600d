import type { Head } from "../../geometry/scalp/head"
import { bandShape } from "../../geometry/section/bandShape"
import { type Foil, type FoilLie, isFoil, type Section } from "../../geometry/section/section"
import { type SurfacePoint, type ViewPoint, viewPoint } from "../../geometry/surface/frames"
import type { SurfacePath } from "../../geometry/surface/surfacePath"
import { add, dot, normalize, scale, subtract, type Vec3 } from "../../geometry/surface/vec3"
import { facing, project, toView, type View } from "../../geometry/surface/views"
import type { Plan } from "../core/document/schema"
import { mixPlaces } from "../core/placement/mixPlaces"
import { type FlatBand, flattenBand, gridPoint, type Hides, visibleRuns } from "./flatBand"
import type { InkName } from "./inks"
import { type LabelRing, placeLabels } from "./labels"
import type { Mark } from "./mark"
import { rootMarks, sectionMarks } from "./sectionMarks"

/** One page of one head: what is remembered for its sections is remembered with it. */
export type Scene = { head: Head; view: View; hides: Hides }

type Drawn = { flat: FlatBand; mix: number; roots: number | null; marks: readonly Mark[] }
const drawnIn = new WeakMap<Scene, WeakMap<Section, Drawn>>()

/** The marks of every section of a plan on one page, in the order of application; numbers apart, see labelMarks. */
export const planMarks = (plan: Plan, scene: Scene): Mark[] =>
  plan.sections.flatMap((section) => drawn(section, plan, scene).marks)

/** The marks of one section on one page. */
export const marksOfSection = (section: Section, plan: Plan, scene: Scene): readonly Mark[] =>
  drawn(section, plan, scene).marks

/** The outline of a section's band on one page: what a selection is drawn round. */
export function bandRing(section: Section, plan: Plan, scene: Scene): ViewPoint[][] {
  const { flat } = drawn(section, plan, scene)
  const layers = [0, flat.shape.layers - 1]
  return visibleRuns(flat).map(([first, last]) => {
    const [near, far] = layers.map((layer) =>
      Array.from({ length: last - first + 1 }, (_, i) => gridPoint(flat, first + i, layer)),
    )
    return [...near, ...far.reverse()]
  })
}

function drawn(section: Section, plan: Plan, scene: Scene): Drawn {
  let ofScene = drawnIn.get(scene)
  if (!ofScene) {
    ofScene = new WeakMap()
    drawnIn.set(scene, ofScene)
  }
  const places = isFoil(section) ? mixPlaces(section, plan) : []
  const mix = places.at(-1) ?? 0
  const roots = places.length > 1 ? places[0] : null
  const known = ofScene.get(section)
  if (known?.mix === mix && known.roots === roots) return known
  const flat = flattenBand(bandShape(section, scene.head), scene.view, scene.head.surface, scene.hides)
  const lie = isFoil(section) ? lieArrow(section, flat, scene) : []
  const onRoots = roots === null ? [] : rootMarks(flat, roots)
  const fresh = { flat, mix, roots, marks: [...sectionMarks(section, flat, mix), ...onRoots, ...lie] }
  ofScene.set(section, fresh)
  return fresh
}

/** The number of each foil that can be seen, round the drawing, with a leader to it. */
export function labelMarks(plan: Plan, scene: Scene, ring: LabelRing, gapMm: number): Mark[] {
  const named = plan.sections.flatMap((section) => {
    const middle = bandMiddle(section, plan, scene)
    if (!middle || !isFoil(section)) return []
    const { near, far } = middle
    const leader = viewPoint((near[0] + far[0]) / 2, (near[1] + far[1]) / 2)
    return [{ text: String(section.mapNumber), leader }]
  })
  const places = placeLabels(
    named.map(({ leader }) => leader),
    ring,
    gapMm,
  )
  return named.map(({ text, leader }, i) => ({ kind: "label", text, leader, at: places[i], ink: "number" }))
}

/** The middle of the longest stretch of a band that can be seen: on its parting and on its far edge. */
export const bandMiddle = (section: Section, plan: Plan, scene: Scene) =>
  middleOf(drawn(section, plan, scene).flat)

function middleOf(flat: FlatBand): { near: ViewPoint; far: ViewPoint } | null {
  const run = longestRun(flat)
  if (!run) return null
  const station = (run[0] + run[1]) >> 1
  return { near: gridPoint(flat, station, 0), far: gridPoint(flat, station, flat.shape.layers - 1) }
}

function longestRun(flat: FlatBand): readonly [first: number, last: number] | null {
  const runs = visibleRuns(flat)
  return runs.length === 0
    ? null
    : runs.reduce((best, run) => (run[1] - run[0] > best[1] - best[0] ? run : best))
}

/** Where the longest stretch of a band that can be seen begins, in the middle of its depth, and the way on from there. */
export function bandStart(
  section: Section,
  plan: Plan,
  scene: Scene,
): { at: ViewPoint; on: ViewPoint } | null {
  const { flat } = drawn(section, plan, scene)
  const run = longestRun(flat)
  if (!run) return null
  const midway = (station: number) => {
    const [near, far] = [gridPoint(flat, station, 0), gridPoint(flat, station, flat.shape.layers - 1)]
    return viewPoint((near[0] + far[0]) / 2, (near[1] + far[1]) / 2)
  }
  return { at: midway(run[0]), on: midway(Math.min(run[0] + 2, run[1])) }
}

/** The hairline where it can be seen. */
export const hairlineMarks = (scene: Scene): Mark[] => {
  const { points } = scene.head.hairline
  return lineMarks([...points, points[0]], "hairline", scene)
}

/** A line over the scalp where it can be seen. */
export const lineMarks = (points: SurfacePath, ink: InkName, scene: Scene): Mark[] =>
  seenPaths(points, scene).map((path) => ({
    kind: "line",
    path,
    ink,
  }))

/** The stretches of a line on the scalp that can be seen on a page. */
export const seenPaths = (points: SurfacePath, scene: Scene): ViewPoint[][] =>
  runsOf(points.map((at) => isSeen(at, scene))).map(([first, last]) =>
    points.slice(first, last + 1).map((at) => toView(scene.view, scene.head.surface, at)),
  )

/** Whether the viewer can see a place of the scalp. */
export const isSeen = (at: SurfacePoint, { head, view, hides }: Scene) =>
  facing(view, head.surface, at) > 0 && !hides(head.surface.pointAt(at))

function runsOf(seen: readonly boolean[]) {
  const runs: [number, number][] = []
  for (let i = 0; i < seen.length; i++) {
    if (!seen[i]) continue
    const first = i
    while (seen[i + 1]) i += 1
    if (i > first) runs.push([first, i])
  }
  return runs
}

const lieToward: Record<FoilLie, Vec3> = {
  down: [0, 0, -1],
  up: [0, 0, 1],
  "toward-face": [0, 1, 0],
  "away-from-face": [0, -1, 0],
}
const arrowMm = 13
const barbMm = 3.2

/** Laid in something that has a way to lie. */
const isWrapped = ({ carrier }: Foil) => carrier.kind === "foil" || carrier.kind === "board"

/** A small arrow from the band's middle the way the foil lies. */
function lieArrow(section: Foil, { shape, visible }: FlatBand, scene: Scene): Mark[] {
  const { view } = scene
  const station = shape.stations >> 1
  if (view.kind === "unrolled" || !isWrapped(section) || !visible[station]) return []
  const i = 3 * (station * shape.layers + shape.layers - 1)
  const root: Vec3 = [shape.points[i], shape.points[i + 1], shape.points[i + 2]]
  const normal: Vec3 = [shape.normals[i], shape.normals[i + 1], shape.normals[i + 2]]
  const wanted = lieToward[section.foilLie]
  const along = normalize(subtract(wanted, scale(normal, 0.999 * dot(wanted, normal))))
  const from = project(view, root)
  const to = project(view, add(root, scale(along, arrowMm)))
  const lengthMm = Math.hypot(to[0] - from[0], to[1] - from[1])
  if (lengthMm < barbMm) return []
  const [dx, dy] = [(to[0] - from[0]) / lengthMm, (to[1] - from[1]) / lengthMm]
  const barb = (side: number) =>
    viewPoint(to[0] - barbMm * (dx + side * 0.5 * dy), to[1] - barbMm * (dy - side * 0.5 * dx))
  return [
    { kind: "line", path: [from, to], ink: "arrow" },
    { kind: "line", path: [barb(1), to, barb(-1)], ink: "arrow" },
  ]
}
