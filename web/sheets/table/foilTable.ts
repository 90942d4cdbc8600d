import { isFoil } from "../../../geometry/section/section"
import type { Measured } from "../../core/figures/measured"
import { takenTwiceOf } from "../../core/figures/takenTwice"
import { pieceOf } from "../../core/kinds/kindRecords"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { letters, rule, rulePt, type, wrap } from "../setting/typesetting"
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

/** The foils and the hair left out, in the order of application, `width` mm wide. */
export function foilTable(figures: Measured, width: number, press: Press): FoilTable {
  const rows = tableRows(figures, press)
  const columns = placeColumns(rows, width, press)
  return {
    head: tableHead(columns, width, press),
    total: totalRow(figures, columns, width, press),
    count: rows.length,
    rows: (rowMm) => rows.map((row) => rowBlock(row, columns, { rowMm, width, press })),
  }
}

function tableHead(columns: readonly PlacedColumn[], width: number, { words }: Press): Block {
  const [low, high] = [findColumn(columns, "lowG"), findColumn(columns, "highG")]
  const product = letters(
    words.sheets.map.table.product,
    [(low.leftMm + high.leftMm + high.widthMm) / 2, firstLineMm],
    type.strong,
    "center",
  )
  const heads = columns.flatMap((column) =>
    words.sheets.map.table.heads[column.field].map((text, line) =>
      letters(
        text,
        [columnX(column, 0), firstLineMm + (line + column.fromLine) * lineMm],
        type.strong,
        column.align,
      ),
    ),
  )
  return {
    heightMm: headMm,
    items: [...heads, product, rule([0, headMm], [width, headMm], rulePt.medium)],
  }
}

function totalRow(figures: Measured, columns: readonly PlacedColumn[], width: number, press: Press): Block {
  const { words, figures: t } = press
  const { productG, hairs, areaCm2, hairG } = figures.totals
  const coated = figures.sections.flatMap(({ section, figures: own }) =>
    isFoil(section) ? [{ kind: section.kind, foils: Math.max(1, own.foils) }] : [],
  )
  const foils = coated.reduce((sum, each) => sum + each.foils, 0)
  const twice = takenTwiceOf(figures)
  const less = twice && words.placement.list.overlaps.takenTwice(twice)
  const said = words.sheets.map.table
  const at = (field: PlacedColumn["field"], grams: number) =>
    letters(t.gramsNumber(grams), [columnX(findColumn(columns, field)), 5.4], type.strong, "right")
  const key = [...(less ? [said.takenTwice(less)] : []), said.arrows].flatMap((sentence) =>
    wrap(sentence, width, type.small, press),
  )
  return {
    heightMm: totalMm + keyMm * (key.length - 1),
    items: [
      letters(said.total({ foils, piece: pieceOf(coated), areaCm2, hairs }), [0, 5.4], type.strong),
      ...key.map((text, line) => letters(text, [0, 10.2 + keyMm * line], type.small)),
      at("hairG", hairG),
      at("lowG", productG.low),
      at("midG", productG.mid),
      at("highG", productG.high),
    ],
  }
}
