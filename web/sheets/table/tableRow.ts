import type { Pair } from "../../../geometry/surface/frames"
import { type Item, tagged } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { capMm, letters, rectangle, rule, rulePt, strokes, type, widthMm, wrap } from "../setting/typesetting"
import { columnX, findColumn, type PlacedColumn } from "./tableColumns"
import type { TableRow } from "./tableRows"

type Setting = { rowMm: number; width: number; press: Press }

const nameLineMm = 4.2

/** One line of the table, `rowMm` high and more where a name takes lines of its own, with a rule under it. */
export function rowBlock(row: TableRow, columns: readonly PlacedColumn[], setting: Setting): Block {
  const { rowMm, width } = setting
  const { items, namesMm } = row.fall
    ? { items: foilItems(row, row.fall, columns, rowMm), namesMm: 0 }
    : leftOutItems(row, columns, setting)
  const long = underRow(row, columns, setting)
  const heightMm = rowMm + namesMm + long.length * nameLineMm
  return {
    heightMm,
    items: tagged([...items, ...long, rule([0, heightMm], [width, heightMm], rulePt.hair)], "P"),
  }
}

/** Under the row, from its kind to the edge of the page. */
function underRow(
  { under }: TableRow,
  columns: readonly PlacedColumn[],
  { rowMm, width, press }: Setting,
): Item[] {
  const { leftMm } = findColumn(columns, "kind")
  const lines = under.flatMap((text) => wrap(text, width - leftMm, type.small, press))
  return lines.map((line, i) => letters(line, [leftMm, rowMm + 2.4 + i * nameLineMm], type.small))
}

function foilItems({ text }: TableRow, fall: Pair, columns: readonly PlacedColumn[], rowMm: number): Item[] {
  const middleMm = rowMm / 2
  return columns.flatMap((column): Item[] => {
    const { field, leftMm, setting, align } = column
    if (field === "on" || field === "off") return [timeBox(column, rowMm)]
    const words = letters(text[field] ?? "", [columnX(column), middleMm + capMm(setting) / 2], setting, align)
    return field === "direction" ? [fallArrow(fall, [leftMm + 2.4, middleMm]), words] : [words]
  })
}

/**
 * The name of hair left out runs over the columns that it leaves empty: those before its length, or the wide ones after
 * its depth, in as many lines as it takes.
 */
function leftOutItems(
  { text }: TableRow,
  columns: readonly PlacedColumn[],
  { rowMm, width, press }: Setting,
): { items: Item[]; namesMm: number } {
  const y = rowMm / 2 + capMm(type.body) / 2
  const { leftMm } = findColumn(columns, "side")
  const length = findColumn(columns, "lengthMm")
  const name = text.side ?? ""
  const isShort = widthMm(name, type.body, press) <= length.leftMm - leftMm - 2
  const nameMm = isShort ? leftMm : columnX(findColumn(columns, "direction"))
  const names = wrap(name, width - nameMm, type.body, press)
  return {
    namesMm: (names.length - 1) * nameLineMm,
    items: [
      ...names.map((line, i) => letters(line, [nameMm, y + i * nameLineMm], type.body)),
      letters(text.lengthMm ?? "", [columnX(length), y], type.body, "right"),
      letters(text.depthMm ?? "", [columnX(findColumn(columns, "depthMm")), y], type.body, "right"),
    ],
  }
}

const boxInsetMm = 0.8

/** To be filled in by pencil at the chair. */
const timeBox = ({ leftMm, widthMm }: PlacedColumn, rowMm: number) =>
  strokes([rectangle(leftMm, boxInsetMm, widthMm, rowMm - 2 * boxInsetMm)], rulePt.fine, true)

const arrowMm = 4.6
const barbMm = 1.6

/** An arrow the way the parting drops. */
function fallArrow([x, y]: Pair, [middleX, middleY]: Pair): Item {
  const tip: Pair = [middleX + (x * arrowMm) / 2, middleY + (y * arrowMm) / 2]
  const tail: Pair = [middleX - (x * arrowMm) / 2, middleY - (y * arrowMm) / 2]
  const barb = (side: number): Pair => [
    tip[0] - barbMm * (x + side * 0.6 * y),
    tip[1] - barbMm * (y - side * 0.6 * x),
  ]
  return strokes(
    [
      [tail, tip],
      [barb(1), tip, barb(-1)],
    ],
    rulePt.medium,
  )
}
