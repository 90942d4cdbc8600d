import type { Fonts } from "../pens/fontFile"
import type { Align } from "../pens/page"
import { type Type, type, widthMm } from "../setting/typesetting"
import type { TableField, TableRow } from "./tableRows"

type Field = TableField | "on" | "off"
export type Column = {
  field: Field
  /** What stands over it, in two lines. */
  head: readonly [string, string]
  align: Align
  setting: Type
  /** Room before the text, for the arrow. */
  indentMm: number
  leastMm: number
  /** Room before the column, as a share of the room before the others. */
  gap: number
}
export type PlacedColumn = Column & { leftMm: number; widthMm: number }

const column = (
  field: Field,
  head: readonly [string, string],
  align: Align,
  more: Partial<Column> = {},
): Column => ({
  field,
  head,
  align,
  setting: type.body,
  indentMm: 0,
  leastMm: 0,
  gap: 1,
  ...more,
})

const boxMm = 11.5
const columns: readonly Column[] = [
  column("order", ["Order", ""], "right"),
  column("number", ["No.", ""], "right", { setting: { sizePt: 14, weight: "semibold" } }),
  column("side", ["Side", ""], "left"),
  column("kind", ["Kind", ""], "left"),
  column("foils", ["Foils", ""], "right"),
  column("lengthMm", ["Length", "mm"], "right"),
  column("depthMm", ["Depth", "mm"], "right"),
  column("direction", ["Parting", ""], "left", { indentMm: 6.5 }),
  column("hairG", ["Hair", "g"], "right"),
  column("lowG", ["", "low"], "right"),
  column("midG", ["", "mid"], "right", { setting: type.strong, gap: 0.6 }),
  column("highG", ["", "high"], "right", { gap: 0.6 }),
  column("mix", ["Mix", ""], "center", { setting: type.strong }),
  column("on", ["On", ""], "left", { leastMm: boxMm }),
  column("off", ["Off", ""], "left", { leastMm: boxMm, gap: 0.6 }),
]

/** The columns side by side over `width` mm: each as wide as its widest text, what is over shared between them. */
export function placeColumns(rows: readonly TableRow[], width: number, fonts: Fonts): PlacedColumn[] {
  const widths = columns.map((each) => columnMm(each, rows, fonts))
  const gaps = columns.map(({ gap }, i) => (i === 0 ? 0 : gap))
  const gapMm = (width - sum(widths)) / sum(gaps)
  return columns.map((each, i) => ({
    ...each,
    leftMm: sum(widths.slice(0, i)) + gapMm * sum(gaps.slice(0, i + 1)),
    widthMm: widths[i],
  }))
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)

function columnMm(
  { field, head, setting, indentMm, leastMm }: Column,
  rows: readonly TableRow[],
  fonts: Fonts,
) {
  const texts =
    field === "on" || field === "off" ? [] : rows.filter(({ fall }) => fall).map(({ text }) => text[field])
  return Math.max(
    leastMm,
    ...head.map((text) => widthMm(text, type.strong, fonts)),
    ...texts.map((text) => indentMm + widthMm(text ?? "", setting, fonts)),
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
