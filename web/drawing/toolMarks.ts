import type { SectionKind } from "../../geometry/section/section"
import { viewPoint } from "../../geometry/surface/frames"
import { newSection } from "../core/document/newSection"
import type { Plan } from "../core/document/schema"
import type { FlatBand } from "./flatBand"
import type { Mark } from "./mark"
import { sectionMarks } from "./sectionMarks"

/** The page of a tool's mark, mm: it is drawn as the map draws what the tool makes, in the first mix's ink. */
export const toolPage = { widthMm: 34, heightMm: 16 } as const

const band = { fromMm: 2, lengthMm: 30, topMm: 4, depthMm: 8 } as const

/** What a section of a kind looks like on the map, on a straight piece of scalp. */
export function kindMarks(kind: SectionKind, plan: Plan): Mark[] {
  const section = { ...newSection(kind, [], plan), depthMm: { start: band.depthMm, end: band.depthMm } }
  return sectionMarks(section, flatPiece(), 0)
}

/** A band laid on a level page: a grid of even steps. */
function flatPiece(): FlatBand {
  const [stations, layers] = [16, 5]
  const alongMm = Float64Array.from({ length: stations }, (_, i) => (band.lengthMm * i) / (stations - 1))
  const xy = new Float64Array(2 * stations * layers)
  for (let i = 0; i < stations * layers; i++) {
    xy[2 * i] = band.fromMm + alongMm[Math.floor(i / layers)]
    xy[2 * i + 1] = -band.topMm - (band.depthMm * (i % layers)) / (layers - 1)
  }
  const none = new Float64Array(0)
  const depthMm = new Float64Array(stations).fill(band.depthMm)
  const shape = { stations, layers, points: none, normals: none, alongMm, depthMm }
  return { shape, xy, visible: new Uint8Array(stations).fill(1) }
}

/** The line that divides a head, as the map draws one. */
export const dividerMark: Mark = {
  kind: "line",
  path: [viewPoint(2, -13), viewPoint(17, -3), viewPoint(32, -13)],
  ink: "divider",
}

/** The dots of a hairline. */
export const hairlineMark: Mark = {
  kind: "line",
  path: Array.from({ length: 13 }, (_, i) => viewPoint(2 + 2.5 * i, -3 - (10 * (i - 6) ** 2) / 36)),
  ink: "hairline",
}

/** What is in hand: a ring with its handles. */
export const selectMarks: readonly Mark[] = [
  {
    kind: "line",
    path: [viewPoint(4, -4), viewPoint(30, -4), viewPoint(30, -12), viewPoint(4, -12)],
    closed: true,
    ink: "selected",
  },
  ...[viewPoint(4, -12), viewPoint(17, -12), viewPoint(30, -12)].map(
    (at): Mark => ({ kind: "dot", at, ink: "handle" }),
  ),
]
