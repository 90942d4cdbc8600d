import { type Item, tagged } from "../pens/page"
import type { Block } from "./block"
import { lineMm } from "./paragraph"
import type { Press } from "./press"
import { letters, rule, rulePt, type Type, type, wrap } from "./typesetting"

const usualLabelMm = 30
/** What a column of labels is wider than the longest of them, mm. */
export const labelGapMm = 1.5
/** From one rule to write on to the next. */
export const writingMm = 8.5

/** Words beside what they are about, the label in a column of its own; without a label (null) they have the whole width. */
export function labelledRow(
  label: string | null,
  text: string,
  width: number,
  press: Press,
  labelMm = usualLabelMm,
): Block {
  const left = label === null ? 0 : labelMm
  const labels = label ? wrap(label, labelMm - labelGapMm, type.strong, press) : []
  const lines = wrap(text, width - left, type.body, press)
  const set = (words: readonly string[], x: number, setting: Type) =>
    words.map((line, i) => letters(line, [x, 3.6 + i * lineMm], setting))
  return {
    heightMm: Math.max(1, labels.length, lines.length) * lineMm + 0.5,
    items: tagged([...set(labels, 0, type.strong), ...set(lines, left, type.body)], "P"),
  }
}

/** Rules to write on by hand. */
export const writingLines = (count: number, width: number): Block => ({
  heightMm: count * writingMm,
  items: Array.from({ length: count }, (_, i) =>
    rule([0, (i + 1) * writingMm], [width, (i + 1) * writingMm], rulePt.hair),
  ),
})

/** How high a row is that is filled in by hand, mm. */
export const fillInMm = 9

/** A label and a line behind it to write on, over the foot of its row. */
export const fillIn = (
  label: string,
  at: { from: number; lineFrom: number; to: number },
  footMm: number,
): Item[] => [
  letters(label, [at.from, footMm - 2], type.body),
  rule([at.lineFrom, footMm - 1.2], [at.to, footMm - 1.2], rulePt.hair),
]
