import { tagged } from "../pens/page"
import type { Block } from "./block"
import type { Press } from "./press"
import { stack } from "./stack"
import { letters, rule, rulePt, type Type, type, wrap } from "./typesetting"

/** One thing to read: what it is about, where that has a name, and the words. */
export type Reading = { label?: string; text: string }
type Column = { width: number; press: Press }

const headingMm = 8.6
const headingLineMm = 7
const lineMm = 5.7
const betweenMm = 1
const underMm = 2
const labelMm = 37
const labelGapMm = 2
/** From a line's foot up to its base line. */
const descentMm = 1.5

/** A part of a sheet in large print: its heading, then what there is to read, with labels in a column. */
export function readingBlock(title: string, readings: readonly Reading[], { width, press }: Column): Block {
  const left = readings.some(({ label }) => label !== undefined) ? labelMm : 0
  const block = stack([
    headingBlock(title, { width, press }),
    ...readings.map((reading) => readingRow(reading, left, { width, press })),
    { heightMm: underMm, items: [] },
  ])
  return { ...block, startsGroup: true }
}

/** A part told apart from the one above it. */
export const underRule = ({ heightMm, items }: Block, width: number): Block => ({
  heightMm,
  items: [rule([0, 0], [width, 0], rulePt.fine), ...items],
  startsGroup: true,
})

function headingBlock(title: string, { width, press }: Column): Block {
  const lines = wrap(title, width, type.largeHeading, press)
  return {
    heightMm: headingMm + (lines.length - 1) * headingLineMm,
    items: tagged(
      lines.map((line, i) => letters(line, [0, 6.6 + i * headingLineMm], type.largeHeading)),
      "H2",
    ),
  }
}

function readingRow({ label = "", text }: Reading, left: number, { width, press }: Column): Block {
  const labels = label ? wrap(label, left - labelGapMm, type.largeStrong, press) : []
  const lines = wrap(text, width - left, type.large, press)
  const set = (words: readonly string[], x: number, setting: Type) =>
    words.map((line, i) => letters(line, [x, (i + 1) * lineMm - descentMm], setting))
  return {
    heightMm: Math.max(labels.length, lines.length) * lineMm + betweenMm,
    items: tagged([...set(labels, 0, type.largeStrong), ...set(lines, left, type.large)], "P"),
  }
}
