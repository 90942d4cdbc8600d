import { edgeBends } from "../../geometry/painted/edge"
import type { Section, SectionKind } from "../../geometry/section/section"
import { stitches } from "../../geometry/section/sectionKinds"
import { type ViewPoint, viewPoint } from "../../geometry/surface/frames"
import { bandPoint, type FlatBand, gridPoint, visibleRuns } from "./flatBand"
import type { InkName } from "./inks"
import type { Mark } from "./mark"

type MixIndex = 0 | 1 | 2 | 3 | 4 | 5
type Segment = readonly [ViewPoint, ViewPoint]

/** What a kind of section looks like, laid on one page. One row a kind. */
type MarkRow<K extends SectionKind> = (section: Section<K>, flat: FlatBand, mix: MixIndex) => Mark[]

const rows: { [K in SectionKind]: MarkRow<K> } = {
  slice: (_, flat, mix) => [...solid(flat, mix), ...hatch(flat, mix), ...edges(flat, mix)],
  weave: (section, flat, mix) => [...teeth(section, flat, mix), ...partingLine(flat, mix)],
  backcomb: (section, flat, mix) => [
    ...(section.base === "weave" ? teeth(section, flat, mix) : [...solid(flat, mix), ...hatch(flat, mix)]),
    ...partingLine(flat, mix),
    ...brushedEdge(flat, mix),
  ],
  painted: (section, flat, mix) => [...paintedPart(section, flat, mix), ...edges(flat, mix)],
  "left-out": (_, flat) => [
    ...bandOutlines(flat).map((path): Mark => ({ kind: "line", path, closed: true, ink: "left-out-edge" })),
    ...strokes(flat, [0], 9, "left-out-hatch"),
  ],
}

/** The marks of one section on one page; `mix` is the place of its mix in the plan's list. */
export function sectionMarks<K extends SectionKind>(
  section: Section<K>,
  flat: FlatBand,
  mix: number,
): Mark[] {
  const row: MarkRow<K> = rows[section.kind]
  return row(section, flat, (mix % 6) as MixIndex)
}

/** Slant of the hatch strokes of each mix, in band depths along the parting: told apart without colour. */
export const hatchSlants: readonly (readonly number[])[] = [[1], [-1], [0], [1, -1], [2.5], [-2.5]]
const hatchGapMm = 3.6

const hatch = (flat: FlatBand, mix: MixIndex) =>
  strokes(flat, hatchSlants[mix], hatchGapMm, `mix-hatch-${mix}`)

/** How deep into the band the hatch of what is on the roots reaches, in depths: it tells of them, not how long they are. */
const rootsReach = 0.42

/** Another mix on the roots of a section: its own hatch beside the parting, in its own ink. */
export const rootMarks = (flat: FlatBand, mix: number): Mark[] => {
  const at = (mix % 6) as MixIndex
  return [
    ...strokes(flat, hatchSlants[at], hatchGapMm, `mix-hatch-${at}`, rootsReach),
    ...partingLine(flat, at),
  ]
}

/** Strokes from the parting to the far edge, or as deep as told, evenly spaced along the parting. */
function strokes(
  flat: FlatBand,
  slantList: readonly number[],
  gapMm: number,
  ink: InkName,
  reach = 1,
): Mark[] {
  const { alongMm, depthMm, stations } = flat.shape
  const lengthMm = alongMm[stations - 1]
  const reachMm = (depthMm[0] + depthMm[stations - 1]) / 2
  const segments = slantList.flatMap((slant) => {
    const leanMm = slant * Math.min(reachMm, 6)
    const found: Segment[] = []
    for (let along = gapMm / 2; along < lengthMm; along += gapMm) {
      const root = bandPoint(flat, along, 0)
      const tip = bandPoint(flat, Math.max(0, Math.min(lengthMm, along + leanMm)), reach)
      if (root && tip) found.push([root, tip])
    }
    return found
  })
  return segments.length > 0 ? [{ kind: "hatch", segments, ink }] : []
}

const solid = (flat: FlatBand, mix: MixIndex): Mark[] =>
  bandOutlines(flat).map((path) => ({ kind: "area", path, ink: `mix-fill-${mix}` }))

const partingLine = (flat: FlatBand, mix: MixIndex) => layerLines(flat, 0, `mix-edge-${mix}`)

const edges = (flat: FlatBand, mix: MixIndex): Mark[] => [
  ...partingLine(flat, mix),
  ...layerLines(flat, flat.shape.layers - 1, `mix-hatch-${mix}`),
]

const layerLines = (flat: FlatBand, layer: number, ink: InkName): Mark[] =>
  visibleRuns(flat).map(([first, last]) => ({
    kind: "line",
    path: stationsOf(flat, first, last, layer),
    ink,
  }))

function stationsOf(flat: FlatBand, first: number, last: number, layer: number) {
  const path: ViewPoint[] = []
  for (let station = first; station <= last; station++) path.push(gridPoint(flat, station, layer))
  return path
}

function bandOutlines(flat: FlatBand): ViewPoint[][] {
  const farLayer = flat.shape.layers - 1
  return visibleRuns(flat).map(([first, last]) => [
    ...stationsOf(flat, first, last, 0),
    ...stationsOf(flat, first, last, farLayer).reverse(),
  ])
}

/** Each stitch as a tooth of its own, at its true pitch and dip. */
function teeth(section: Section<"weave" | "backcomb">, flat: FlatBand, mix: MixIndex): Mark[] {
  const partingMm = flat.shape.alongMm[flat.shape.stations - 1]
  return stitches(section, partingMm).flatMap(({ fromMm, toMm, depthShare }) => {
    const path = [
      bandPoint(flat, fromMm, 0),
      bandPoint(flat, fromMm, depthShare),
      bandPoint(flat, toMm, depthShare),
      bandPoint(flat, toMm, 0),
    ].filter((point) => point !== null)
    if (path.length < 4) return []
    const tooth: Mark[] = [
      { kind: "area", path, ink: `mix-fill-${mix}` },
      { kind: "line", path, closed: true, ink: `mix-hatch-${mix}` },
    ]
    return tooth
  })
}

/** How much of the band its painted edge runs over, in depths: the shape tells, the depth does not. */
const edgeDepths = { high: 0.2, low: 0.8 }

/** What is painted, from its edge to the far side of the band, wherever it can be seen. */
function paintedPart({ painting }: Section<"painted">, flat: FlatBand, mix: MixIndex): Mark[] {
  const lengthMm = flat.shape.alongMm[flat.shape.stations - 1]
  const { dropShare } = painting
  const points = edgeBends(painting, 0).map(([across, share]) => {
    const low = dropShare > 0 ? share / dropShare : 0.5
    const depth = edgeDepths.high + (edgeDepths.low - edgeDepths.high) * low
    const edge = bandPoint(flat, across * lengthMm, depth)
    const far = bandPoint(flat, across * lengthMm, 1)
    return edge && far && { edge, far }
  })
  const seen = points.filter((point) => point !== null)
  if (seen.length < 2) return []
  const edge = seen.map((point) => point.edge)
  const far = seen.map((point) => point.far)
  return [
    { kind: "area", path: [...edge, ...far.reverse()], ink: `mix-fill-${mix}` },
    { kind: "line", path: edge, ink: `mix-hatch-${mix}` },
  ]
}

const bristleGapMm = 2.2
const bristleReach = [1.45, 1.15, 1.6, 1.25, 1.5, 1.05] as const

/** The brushed edge of backcombed hair: short uneven bristles past the far edge. */
function brushedEdge(flat: FlatBand, mix: MixIndex): Mark[] {
  const lengthMm = flat.shape.alongMm[flat.shape.stations - 1]
  const segments: Segment[] = []
  for (let i = 0; i * bristleGapMm < lengthMm; i++) {
    const root = bandPoint(flat, i * bristleGapMm, 0.6)
    const tip = bandPoint(flat, Math.min(lengthMm, (i + 0.6) * bristleGapMm), 1)
    if (!root || !tip) continue
    const reach = bristleReach[i % bristleReach.length]
    segments.push([
      root,
      viewPoint(root[0] + (tip[0] - root[0]) * reach, root[1] + (tip[1] - root[1]) * reach),
    ])
  }
  return [{ kind: "hatch", segments, ink: `mix-edge-${mix}` }]
}
