import type { Head } from "../../../geometry/scalp/head"
import type { SectionFigures } from "../../../geometry/section/measureSection"
import { type CarrierKind, type Foil, isFoil, type Section } from "../../../geometry/section/section"
import type { Pair } from "../../../geometry/surface/frames"
import { fixedViews, toView } from "../../../geometry/surface/views"
import type { Measured } from "../../core/figures/measured"
import { gramsNumber } from "../../core/text/figureText"
import { directionText, kindWords, type Side, sideOf } from "../../core/text/words"
import { millimetres } from "../setting/numbers"
import { stitchesOf } from "./stitchesOf"

export const tableFields = [
  "order",
  "number",
  "side",
  "kind",
  "foils",
  "lengthMm",
  "depthMm",
  "direction",
  "hairG",
  "lowG",
  "midG",
  "highG",
  "mix",
] as const
export type TableField = (typeof tableFields)[number]

/** One line of the table in words. A foil has the way its parting drops, and boxes for the times it went on and off. */
export type TableRow = { text: Partial<Record<TableField, string>>; fall: Pair | null }

/** The rows of a plan, in the order of application. */
export function tableRows({ head, sections }: Measured): TableRow[] {
  let order = 0
  return sections.map(({ section, figures }) =>
    isFoil(section) ? foilRow(section, figures, ++order, head) : leftOutRow(section, figures),
  )
}

function foilRow(foil: Foil, figures: SectionFigures, order: number, head: Head): TableRow {
  const { low, mid, high } = figures.productG
  return {
    fall: fallOf(foil, head),
    text: {
      order: String(order),
      number: String(foil.mapNumber),
      side: sideOf(foil),
      kind: kindText(foil),
      foils: carriers[foil.carrier.kind](figures.foils),
      lengthMm: String(Math.round(figures.partingMm)),
      depthMm: depthText(foil),
      direction: directionText(foil, head),
      hairG: gramsNumber(figures.hairG),
      lowG: gramsNumber(low),
      midG: gramsNumber(mid),
      highG: gramsNumber(high),
      mix: foil.mix,
    },
  }
}

const leftOutRow = (section: Section<"left-out">, { partingMm }: SectionFigures): TableRow => ({
  fall: null,
  text: {
    side: section.name ? `Left out: ${section.name}` : "Left out",
    lengthMm: String(Math.round(partingMm)),
    depthMm: depthText(section),
  },
})

/** The kind, with stitch and gap in mm where the hair is woven, and as much of a name of its own as there is room for. */
function kindText(foil: Foil): string {
  const stitches = stitchesOf(foil)
  const pitch = stitches && ` ${millimetres(stitches.stitchMm)}/${millimetres(stitches.gapMm)}`
  return kindWords[foil.kind] + (pitch ?? "") + (foil.name ? `, ${shortName(foil.name)}` : "")
}

const mostLetters = 14

function shortName(name: string): string {
  const letters = [...name]
  return letters.length > mostLetters
    ? `${letters
        .slice(0, mostLetters - 1)
        .join("")
        .trimEnd()}…`
    : name
}

/** One depth, or both where the band is a wedge. */
export function depthText({ depthMm: { start, end } }: Section): string {
  const [from, to] = [millimetres(start), millimetres(end)]
  return from === to ? from : `${from}–${to}`
}

/** How many foils it takes, or what it is laid on or left in instead. */
const carriers: Record<CarrierKind, (foils: number) => string> = {
  foil: String,
  board: () => "board",
  "open-air": () => "open",
}

const viewOfSide = { left: fixedViews.left, right: fixedViews.right, centre: fixedViews.front } as const

/** The way a parting drops, as someone facing that side of the client sees it: a unit vector of the page, y down. */
function fallOf(foil: Foil, head: Head): Pair {
  const side: Side = sideOf(foil)
  const { parting } = foil
  const ends = [parting[0], parting[parting.length - 1]]
  const [from, to] = ends.map((at) => toView(viewOfSide[side], head.surface, at))
  const [x, y] = [to[0] - from[0], from[1] - to[1]]
  const size = (y < 0 ? -1 : 1) * (Math.hypot(x, y) || 1)
  return [x / size, y / size]
}
