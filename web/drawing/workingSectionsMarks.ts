import type { Section } from "../../geometry/section/section"
import { type SurfacePoint, type ViewPoint, viewPoint } from "../../geometry/surface/frames"
import { facing, toView } from "../../geometry/surface/views"
import { bandPlace, cutsOf } from "../../geometry/working/workingSectionCuts"
import { innerPlaces } from "../../geometry/working/workingSectionPlaces"
import type { Division } from "../../geometry/working/workingSections"
import type { Plan } from "../core/document/schema"
import type { Divider } from "../core/document/workingSectionsSchema"
import { headOf } from "../core/figures/measured"
import {
  dividingOf,
  divisionOf,
  type WorkingSection,
  workingSectionsOf,
} from "../core/figures/workingSections"
import { crossingsOf } from "../core/figures/workingSectionsBelonging"
import type { InkName } from "./inks"
import type { Mark } from "./mark"
import { isSeen, type Scene, seenPaths } from "./marks"

/** The dividing partings on one page. */
export const dividerMarks = (plan: Plan, scene: Scene): Mark[] =>
  dividingOf(plan).dividers.flatMap((_, index) => oneDividerMarks(index, plan, scene, "divider"))

/** One dividing parting on one page, from edge to edge. */
export const oneDividerMarks = (index: number, plan: Plan, scene: Scene, ink: InkName): Mark[] =>
  dividerPaths(index, plan, scene).map((path) => ({ kind: "line", path, ink }))

/** What can be seen of a dividing parting on a page. */
export const dividerPaths = (index: number, plan: Plan, scene: Scene): ViewPoint[][] =>
  seenPaths(divisionOf(plan).dividers[index].path, scene)

/** Where a hand can take hold of a dividing parting on a page: its ends and its middle. */
export function dividerHandles({ parting }: Divider, scene: Scene): { pointIndex: number; at: ViewPoint }[] {
  const last = parting.length - 1
  return [...new Set([0, Math.round(last / 2), last])]
    .filter((pointIndex) => isSeen(parting[pointIndex], scene))
    .map((pointIndex) => ({ pointIndex, at: toView(scene.view, scene.head.surface, parting[pointIndex]) }))
}

/** A small cross where a section crosses a dividing parting that it was not told it may. */
export const crossingMarks = (plan: Plan, scene: Scene): Mark[] =>
  crossingsOf(plan).flatMap(({ section }) =>
    crossingPlaces(section, plan)
      .filter((at) => isSeen(at, scene))
      .map((at): Mark => crossAt(toView(scene.view, scene.head.surface, at))),
  )

const armMm = 2.6

const crossAt = ([x, y]: ViewPoint): Mark => ({
  kind: "hatch",
  segments: [1, -1].map((lean) => [
    viewPoint(x - armMm, y - lean * armMm),
    viewPoint(x + armMm, y + lean * armMm),
  ]),
  ink: "crossing",
})

const knownPlaces = new WeakMap<Division, WeakMap<Section, readonly SurfacePoint[]>>()

/** Where a section crosses: at each cut, or at its middle where the dividing parting runs along it. */
function crossingPlaces(section: Section, plan: Plan): readonly SurfacePoint[] {
  const division = divisionOf(plan)
  const ofDivision = knownPlaces.get(division) ?? new WeakMap<Section, readonly SurfacePoint[]>()
  knownPlaces.set(division, ofDivision)
  const known = ofDivision.get(section)
  if (known) return known
  const head = headOf(plan)
  const cuts = cutsOf(section, head, division).slice(1)
  const shares = cuts.length > 0 ? cuts.map(({ from }) => from) : [0.5]
  const places = shares.map((share) => bandPlace(section, head, share))
  ofDivision.set(section, places)
  return places
}

/** The number of each working section that can be seen, in a ring so many mm high, where foils leave most room for it. */
export const workingNumberMarks = (plan: Plan, scene: Scene, ringMm: number): Mark[] =>
  workingNumbers(plan, scene).flatMap(({ working: { numeral }, at }): Mark[] => {
    const path = oval(at, (ringMm / 2) * Math.max(1, 0.55 + 0.25 * numeral.length), ringMm / 2)
    return [
      { kind: "area", path, ink: "working-ground" },
      { kind: "line", path, closed: true, ink: "working-ring" },
      { kind: "label", at, text: numeral, ink: "working-number" },
    ]
  })

const oval = ([x, y]: ViewPoint, halfWidth: number, halfHeight: number): ViewPoint[] =>
  Array.from({ length: 24 }, (_, i) => {
    const turn = (Math.PI * i) / 12
    return viewPoint(x + halfWidth * Math.cos(turn), y + halfHeight * Math.sin(turn))
  })

/** Where on a page the number of each working section is written; those out of sight have no place. */
function workingNumbers(plan: Plan, scene: Scene): { working: WorkingSection; at: ViewPoint }[] {
  const { view, head } = scene
  return workingSectionsOf(plan).flatMap((working) => {
    let best: { at: SurfacePoint; room: number } | null = null
    for (const { at, clear } of roomIn(working, plan)) {
      const room = clear * facing(view, head.surface, at)
      if (room > (best?.room ?? leastRoom) && isSeen(at, scene)) best = { at, room }
    }
    return best ? [{ working, at: toView(view, head.surface, best.at) }] : []
  })
}

/** Less room than this, radians of the map turned to the viewer, is no place for a number: about 4 mm. */
const leastRoom = 0.05
/** As many places of a working section are looked at, the widest first. */
const mostPlaces = 24

type Room = { at: SurfacePoint; clear: number }
const knownRoom = new WeakMap<Plan["sections"], WeakMap<WorkingSection, readonly Room[]>>()

/** Places of a working section and how far they stay from its edges and from foils, radians of the map. */
function roomIn(working: WorkingSection, plan: Plan): readonly Room[] {
  const ofSections = knownRoom.get(plan.sections) ?? new WeakMap<WorkingSection, readonly Room[]>()
  knownRoom.set(plan.sections, ofSections)
  const known = ofSections.get(working)
  if (known) return known
  const taken = plan.sections.flatMap(({ parting }) => parting.filter((_, i) => i % 2 === 0))
  const room = innerPlaces(working.area)
    .map(({ at, clear }) => ({ at, clear: Math.min(clear, nearest(at, taken)) }))
    .sort((a, b) => b.clear - a.clear)
    .slice(0, mostPlaces)
  ofSections.set(working, room)
  return room
}

function nearest([u, v]: SurfacePoint, places: readonly SurfacePoint[]): number {
  let square = Infinity
  for (const [atU, atV] of places) square = Math.min(square, (atU - u) ** 2 + (atV - v) ** 2)
  return Math.sqrt(square)
}
