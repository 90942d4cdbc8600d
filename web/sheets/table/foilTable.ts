import type { Measured } from "../../core/figures/measured"
import { takenTwiceWords } from "../../core/figures/overlapWords"
import { areaText, countText, gramsNumber, hairsRangeText } from "../../core/text/figureText"
import type { Fonts } from "../pens/fontFile"
import type { Block } from "../setting/block"
import { letters, rule, rulePt, type } from "../setting/typesetting"
import { columnX, findColumn, type PlacedColumn, placeColumns } from "./tableColumns"
import { rowBlock } from "./tableRow"
import { tableRows } from "./tableRows"

/** The table in pieces that a page may break between; the head is set again on each page. */
export type FoilTable = { head: Block; total: Block; count: number; rows(rowMm: number): Block[] }

const firstLineMm = 3.6
const lineMm = 4.5
const headMm = 10.4
const totalMm = 11
const keyMm = 4.2
const arrowKey =
  "On the map an arrow shows how a foil lies; in the table, how the parting drops as that side is seen."

/** The foils and the hair left out, in the order of application, `width` mm wide. */
export function foilTable(figures: Measured, width: number, fonts: Fonts): FoilTable {
  const rows = tableRows(figures)
  const columns = placeColumns(rows, width, fonts)
  return {
    head: tableHead(columns, width),
    total: totalRow(figures, columns),
    count: rows.length,
    rows: (rowMm) => rows.map((row) => rowBlock(row, columns, { rowMm, width, fonts })),
  }
}

function tableHead(columns: readonly PlacedColumn[], width: number): Block {
  const [low, high] = [findColumn(columns, "lowG"), findColumn(columns, "highG")]
  const product = letters(
    "Product, g",
    [(low.leftMm + high.leftMm + high.widthMm) / 2, firstLineMm],
    type.strong,
    "center",
  )
  const words = columns.flatMap((column) =>
    column.head.map((text, line) =>
      letters(text, [columnX(column, 0), firstLineMm + line * lineMm], type.strong, column.align),
    ),
  )
  return {
    heightMm: headMm,
    items: [
      ...words.filter(({ text }) => text !== ""),
      product,
      rule([0, headMm], [width, headMm], rulePt.medium),
    ],
  }
}

function totalRow(figures: Measured, columns: readonly PlacedColumn[]): Block {
  const { productG, hairs, areaCm2, foils, hairG } = figures.totals
  const less = takenTwiceWords(figures)
  const sum = `${countText(foils, "foil")}, ${areaText(areaCm2)} of scalp, ${hairsRangeText(hairs)} hairs`
  const at = (field: PlacedColumn["field"], grams: number) =>
    letters(gramsNumber(grams), [columnX(findColumn(columns, field)), 5.4], type.strong, "right")
  const key = less ? [`${less}; cross-hatched on the map.`, arrowKey] : [arrowKey]
  return {
    heightMm: totalMm + keyMm * (key.length - 1),
    items: [
      letters(sum, [0, 5.4], type.strong),
      ...key.map((words, line) => letters(words, [0, 10.2 + keyMm * line], type.small)),
      at("hairG", hairG),
      at("lowG", productG.low),
      at("midG", productG.mid),
      at("highG", productG.high),
    ],
  }
}
