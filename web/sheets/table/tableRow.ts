import type { Pair } from "../../../geometry/surface/frames"
import { type Item, tagged } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import {
  capMm,
  letters,
  rectangle,
  rule,
  rulePt,
  shorten,
  strokes,
  type,
  widthMm,
} from "../setting/typesetting"
import { columnX, findColumn, type PlacedColumn } from "./tableColumns"
import type { TableRow } from "./tableRows"

type Setting = { rowMm: number; width: number; press: Press }

/** One line of the table, `rowMm` high, with a rule under it. */
export const rowBlock = (row: TableRow, columns: readonly PlacedColumn[], setting: Setting): Block => ({
  heightMm: setting.rowMm,
  items: tagged(
    [
      ...(row.fall ? foilItems(row, row.fall, columns, setting.rowMm) : leftOutItems(row, columns, setting)),
      rule([0, setting.rowMm], [setting.width, setting.rowMm], rulePt.hair),
    ],
    "P",
  ),
})

function foilItems({ text }: TableRow, fall: Pair, columns: readonly PlacedColumn[], rowMm: number): Item[] {
  const middleMm = rowMm / 2
  return columns.flatMap((column): Item[] => {
    const { field, leftMm, setting, align } = column
    if (field === "on" || field === "off") return [timeBox(column, rowMm)]
    const words = letters(text[field] ?? "", [columnX(column), middleMm + capMm(setting) / 2], setting, align)
    return field === "direction" ? [fallArrow(fall, [leftMm + 2.4, middleMm]), words] : [words]
  })
}

/** The name of hair left out runs over the columns that it leaves empty: those before its length, or the wide ones after its depth. */
function leftOutItems(
  { text }: TableRow,
  columns: readonly PlacedColumn[],
  { rowMm, width, press }: Setting,
): Item[] {
  const y = rowMm / 2 + capMm(type.body) / 2
  const { leftMm } = findColumn(columns, "side")
  const length = findColumn(columns, "lengthMm")
  const name = text.side ?? ""
  const isShort = widthMm(name, type.body, press) <= length.leftMm - leftMm - 2
  const nameMm = isShort ? leftMm : columnX(findColumn(columns, "direction"))
  return [
    letters(shorten(name, width - nameMm, type.body, press), [nameMm, y], type.body),
    letters(text.lengthMm ?? "", [columnX(length), y], type.body, "right"),
    letters(text.depthMm ?? "", [columnX(findColumn(columns, "depthMm")), y], type.body, "right"),
  ]
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
