import type { Align } from "../pens/page"
import type { Press } from "../setting/press"
import { type Type, type, widthMm } from "../setting/typesetting"
import type { TableField, TableRow } from "./tableRows"

type Field = TableField | "on" | "off"
export type Column = {
  field: Field
  align: Align
  setting: Type
  /** The line of the head that its words begin on; three share what stands above them. */
  fromLine: 0 | 1
  /** Room before the text, for the arrow. */
  indentMm: number
  leastMm: number
  /** Room before the column, as a share of the room before the others. */
  gap: number
}
export type PlacedColumn = Column & { leftMm: number; widthMm: number }

const column = (field: Field, align: Align, more: Partial<Column> = {}): Column => ({
  field,
  align,
  setting: type.body,
  fromLine: 0,
  indentMm: 0,
  leastMm: 0,
  gap: 1,
  ...more,
})

const boxMm = 11.5
const columns: readonly Column[] = [
  column("order", "right"),
  column("number", "right", { setting: { sizePt: 14, weight: "semibold" } }),
  column("side", "left"),
  column("kind", "left"),
  column("foils", "right"),
  column("lengthMm", "right"),
  column("depthMm", "right"),
  column("direction", "left", { indentMm: 6.5 }),
  column("start", "right"),
  column("hairG", "right"),
  column("lowG", "right", { fromLine: 1 }),
  column("midG", "right", { fromLine: 1, setting: type.strong }),
  column("highG", "right", { fromLine: 1 }),
  column("mix", "center", { setting: type.strong }),
  column("on", "left", { leastMm: boxMm }),
  column("off", "left", { leastMm: boxMm, gap: 0.6 }),
]

/** The columns side by side over `width` mm: each as wide as its widest text, what is over shared between them. */
export function placeColumns(rows: readonly TableRow[], width: number, press: Press): PlacedColumn[] {
  const widths = columns.map((each) => columnMm(each, rows, press))
  const gaps = columns.map(({ gap }, i) => (i === 0 ? 0 : gap))
  const gapMm = (width - sum(widths)) / sum(gaps)
  return columns.map((each, i) => ({
    ...each,
    leftMm: sum(widths.slice(0, i)) + gapMm * sum(gaps.slice(0, i + 1)),
    widthMm: widths[i],
  }))
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)

function columnMm({ field, setting, indentMm, leastMm }: Column, rows: readonly TableRow[], press: Press) {
  const texts =
    field === "on" || field === "off" ? [] : rows.filter(({ fall }) => fall).map(({ text }) => text[field])
  return Math.max(
    leastMm,
    ...press.words.sheets.map.table.heads[field].map((text) => widthMm(text, type.strong, press)),
    ...texts.map((text) => indentMm + widthMm(text ?? "", setting, press)),
  )
}

export function findColumn(columns: readonly PlacedColumn[], field: PlacedColumn["field"]): PlacedColumn {
  const found = columns.find((each) => each.field === field)
  if (!found) throw new Error(`the table has no column "${field}"`)
  return found
}

/** Where the text of a column begins, is centred or ends. */
export function columnX({ align, leftMm, widthMm, indentMm }: PlacedColumn, indent = indentMm): number {
  if (align === "right") return leftMm + widthMm
  return align === "center" ? leftMm + widthMm / 2 : leftMm + indent
}
