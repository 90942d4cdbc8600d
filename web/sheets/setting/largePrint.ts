import { tagged } from "../pens/page"
import type { Block } from "./block"
import type { Press } from "./press"
import { stack } from "./stack"
import { letters, rule, rulePt, type, wrap } from "./typesetting"

/** One thing to read: what it is about, where that has a name, and the words. */
export type Reading = { label?: string; text: string }
type Column = { width: number; press: Press }

const headingMm = 8.6
const lineMm = 5.7
const betweenMm = 1
const underMm = 2
const labelMm = 37
/** From a line's foot up to its base line. */
const descentMm = 1.5

/** A part of a sheet in large print: its heading, then what there is to read, with labels in a column. */
export function readingBlock(title: string, readings: readonly Reading[], { width, press }: Column): Block {
  const left = readings.some(({ label }) => label !== undefined) ? labelMm : 0
  const block = stack([
    { heightMm: headingMm, items: tagged([letters(title, [0, 6.6], type.largeHeading)], "H2") },
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

function readingRow({ label, text }: Reading, left: number, { width, press }: Column): Block {
  const lines = wrap(text, width - left, type.large, press)
  return {
    heightMm: lines.length * lineMm + betweenMm,
    items: tagged(
      [
        ...(label === undefined ? [] : [letters(label, [0, lineMm - descentMm], type.largeStrong)]),
        ...lines.map((line, i) => letters(line, [left, (i + 1) * lineMm - descentMm], type.large)),
      ],
      "P",
    ),
  }
}
