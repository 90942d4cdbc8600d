import type { Head } from "../../../geometry/scalp/head"
import type { SectionFigures } from "../../../geometry/section/measureSection"
import { type Foil, isFoil, type Section } from "../../../geometry/section/section"
import { kindOf } from "../../../geometry/section/sectionKinds"
import type { Pair } from "../../../geometry/surface/frames"
import { fixedViews, toView } from "../../../geometry/surface/views"
import type { Measured } from "../../core/figures/measured"
import { stitchesOf } from "../../core/figures/stitchesOf"
import { coatCodes, coatLetters } from "../../core/placement/coatCodes"
import { directionIn, type Side, sideOf } from "../../core/placement/places"
import type { Press } from "../setting/press"

export const tableFields = [
  "order",
  "number",
  "side",
  "kind",
  "foils",
  "lengthMm",
  "depthMm",
  "direction",
  "start",
  "hairG",
  "lowG",
  "midG",
  "highG",
  "mix",
] as const
export type TableField = (typeof tableFields)[number]

/** One line of the table in words. A foil has the way its parting drops, and boxes for the times it went on and off. */
export type TableRow = {
  text: Partial<Record<TableField, string>>
  fall: Pair | null
  /** What is too long for its column stands under the row, whole: a name of its own, and where two mixes are. */
  under: readonly string[]
}

/** The rows of a plan, in the order of application. */
export function tableRows({ head, sections }: Measured, press: Press): TableRow[] {
  let order = 0
  return sections.map(({ section, figures }) =>
    isFoil(section)
      ? foilRow(section, figures, { order: ++order, head, press })
      : leftOutRow(section, figures, press),
  )
}

type Row = { order: number; head: Head; press: Press }

function foilRow(foil: Foil, figures: SectionFigures, { order, head, press }: Row): TableRow {
  const { low, mid, high } = figures.productG
  const { figures: t, words } = press
  const said = words.sheets.map.table
  const coats = coatCodes(foil)
  return {
    fall: fallOf(foil, head),
    under: [
      ...(foil.name && isLong(foil.name) ? [foil.name] : []),
      ...(coats.length > 1 ? [t.capital(words.common.coats(coats))] : []),
    ],
    text: {
      order: t.whole(order),
      number: t.whole(foil.mapNumber),
      side: said.sides[sideOf(foil)],
      kind: kindText(foil, press),
      foils: foil.carrier.kind === "foil" ? t.whole(figures.foils) : said.carriers[foil.carrier.kind],
      lengthMm: t.whole(figures.partingMm),
      depthMm: depthText(foil, press),
      direction: said.direction(directionIn(foil, head)),
      start: said.start(kindOf(foil).productStartMm(foil), foil.strand),
      hairG: t.gramsNumber(figures.hairG),
      lowG: t.gramsNumber(low),
      midG: t.gramsNumber(mid),
      highG: t.gramsNumber(high),
      mix: coatLetters(coats),
    },
  }
}

const leftOutRow = (section: Section<"left-out">, { partingMm }: SectionFigures, press: Press): TableRow => ({
  fall: null,
  under: [],
  text: {
    side: press.words.sheets.map.table.leftOut(section.name),
    lengthMm: press.figures.whole(partingMm),
    depthMm: depthText(section, press),
  },
})

/** The kind, with stitch and gap in mm where the hair is woven, and a name of its own where there is room for it. */
function kindText(foil: Foil, { words }: Press): string {
  const said = words.sheets.map.table
  const stitches = stitchesOf(foil)
  const pitch = stitches ? ` ${said.half(stitches.stitchMm)}/${said.half(stitches.gapMm)}` : ""
  return said.kinds[foil.kind] + pitch + (foil.name && !isLong(foil.name) ? `, ${foil.name}` : "")
}

const mostLetters = 14

const isLong = (name: string) => [...name].length > mostLetters

/** One depth, or both where the band is a wedge. */
export function depthText({ depthMm: { start, end } }: Section, { words, figures }: Press): string {
  const { half } = words.sheets.map.table
  return figures.spread(half(start), half(end))
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
