import type { Fault } from "../../../presets/sheets/teaching"
import type { Fonts } from "../pens/fontFile"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import type { Flowing } from "../setting/flow"
import { lineMm, paragraph, titled } from "../setting/paragraph"
import { beside, stack } from "../setting/stack"
import { letters, rectangle, rule, rulePt, strokes, type, wrap } from "../setting/typesetting"

/** Common faults, each with its cause and its cure, as a table that may run on. */
export function faultTable(faults: readonly Fault[], width: number, fonts: Fonts): Flowing[] {
  const columns = [
    { leftMm: 0, widthMm: 0.22 * width - 4 },
    { leftMm: 0.22 * width, widthMm: 0.38 * width - 4 },
    { leftMm: 0.6 * width, widthMm: 0.4 * width },
  ]
  const row = (cells: readonly string[], isHead: boolean): Block => {
    const set = columns.map(({ widthMm }, i) =>
      wrap(cells[i], widthMm, isHead || i === 0 ? type.strong : type.body, fonts),
    )
    const heightMm = Math.max(...set.map(({ length }) => length)) * lineMm + 1.8
    const items: Item[] = set.flatMap((lines, i) =>
      lines.map((line, at) =>
        letters(line, [columns[i].leftMm, 4.2 + at * lineMm], isHead || i === 0 ? type.strong : type.body),
      ),
    )
    return { heightMm, items: [...items, rule([0, heightMm], [width, heightMm], rulePt.hair)] }
  }
  const again = row(["Fault", "Cause", "Cure"], true)
  const [first, ...rest] = faults.map(({ fault, cause, cure }) => row([fault, cause, cure], false))
  const [top] = titled("Common faults (common practice)", width, [stack([again, first])])
  return [top, ...rest.map((block) => ({ ...block, again }))]
}

const boxMm = 4
const besideBoxMm = 7
const columnGapMm = 7

/** Boxes for the student to tick, in two columns. */
export function checkList(checks: readonly string[], width: number, fonts: Fonts): Block {
  const columnMm = (width - columnGapMm) / 2
  const half = Math.ceil(checks.length / 2)
  const columns = [checks.slice(0, half), checks.slice(half)].map((texts) =>
    stack(texts.map((text) => tickBox(text, columnMm, fonts))),
  )
  return beside(...columns.map((block, i) => ({ block, leftMm: i * (columnMm + columnGapMm) })))
}

function tickBox(text: string, width: number, fonts: Fonts): Block {
  const words = paragraph(text, width - besideBoxMm, fonts)
  return beside(
    { block: { heightMm: words.heightMm + 1.2, items: [box(0, 0.4)] }, leftMm: 0 },
    { block: words, leftMm: besideBoxMm },
  )
}

const box = (x: number, y: number) => strokes([rectangle(x, y, boxMm, boxMm)], rulePt.medium, true)

const writingMm = 9
const padMm = 4

/** To be filled in by whoever watched: name, date, how it was done, remarks, signature. */
export function assessorsBox(width: number): Block {
  const heightMm = 5 * writingMm
  const middle = width / 2
  const right = width - padMm
  const field = (label: string, from: number, to: number, row: number, labelMm: number): Item[] => [
    letters(label, [from, row * writingMm - 2], type.body),
    rule([from + labelMm, row * writingMm - 1.2], [to, row * writingMm - 1.2], rulePt.hair),
  ]
  const tick = (label: string, x: number): Item[] => [
    box(x, 2 * writingMm - 5.4),
    letters(label, [x + besideBoxMm, 2 * writingMm - 2], type.body),
  ]
  return {
    heightMm: heightMm + 1,
    items: [
      strokes([rectangle(0, 0.5, width, heightMm)], rulePt.medium, true),
      ...field("Student", padMm, middle - padMm, 1, 18),
      ...field("Date", middle, right, 1, 12),
      ...tick("done unaided", padMm),
      ...tick("with help", padMm + 48),
      ...tick("not yet", padMm + 88),
      ...field("Remarks", padMm, right, 3, 18),
      ...field("", padMm, right, 4, 0),
      ...field("Assessor’s name", padMm, middle - padMm, 5, 32),
      ...field("Signature", middle, right, 5, 20),
    ],
  }
}
