import type { LessonWords } from "../../words/every/lessonWords"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import type { Flowing } from "../setting/flow"
import { fillIn, fillInMm } from "../setting/labelledRow"
import { lineMm, paragraph, titled } from "../setting/paragraph"
import type { Press } from "../setting/press"
import { beside, stack } from "../setting/stack"
import { letters, rectangle, rule, rulePt, shorten, strokes, type, wrap } from "../setting/typesetting"

/** Common faults, each with its cause and its cure, as a table that may run on. */
export function faultTable(faults: LessonWords["faults"], width: number, press: Press): Flowing[] {
  const said = press.words.sheets.handout
  const columns = [
    { leftMm: 0, widthMm: 0.22 * width - 4 },
    { leftMm: 0.22 * width, widthMm: 0.38 * width - 4 },
    { leftMm: 0.6 * width, widthMm: 0.4 * width },
  ]
  const row = (cells: readonly string[], isHead: boolean): Block => {
    const set = columns.map(({ widthMm }, i) =>
      wrap(cells[i], widthMm, isHead || i === 0 ? type.strong : type.body, press),
    )
    const heightMm = Math.max(...set.map(({ length }) => length)) * lineMm + 1.8
    const items: Item[] = set.flatMap((lines, i) =>
      lines.map((line, at) =>
        letters(line, [columns[i].leftMm, 4.2 + at * lineMm], isHead || i === 0 ? type.strong : type.body),
      ),
    )
    return { heightMm, items: [...items, rule([0, heightMm], [width, heightMm], rulePt.hair)] }
  }
  const again = row([said.fault, said.cause, said.cure], true)
  const [first, ...rest] = faults.map(({ fault, cause, cure }) => row([fault, cause, cure], false))
  if (!first) return []
  const [top] = titled(said.faults, width, [stack([again, first])])
  return [top, ...rest.map((block) => ({ ...block, again }))]
}

const boxMm = 4
const besideBoxMm = 7
const columnGapMm = 7

/** Boxes for the student to tick, in two columns. */
export function checkList(checks: readonly string[], width: number, press: Press): Block {
  const columnMm = (width - columnGapMm) / 2
  const half = Math.ceil(checks.length / 2)
  const columns = [checks.slice(0, half), checks.slice(half)].map((texts) =>
    stack(texts.map((text) => tickBox(text, columnMm, press))),
  )
  return beside(...columns.map((block, i) => ({ block, leftMm: i * (columnMm + columnGapMm) })))
}

function tickBox(text: string, width: number, press: Press): Block {
  const words = paragraph(text, width - besideBoxMm, press)
  return beside(
    { block: { heightMm: words.heightMm + 1.2, items: [box(0, 0.4)] }, leftMm: 0 },
    { block: words, leftMm: besideBoxMm },
  )
}

const box = (x: number, y: number) => strokes([rectangle(x, y, boxMm, boxMm)], rulePt.medium, true)

const padMm = 4
const nameMm = 18
const nameAt = [padMm + nameMm, fillInMm - 2] as const

/** To be filled in by whoever watched: name, where nobody is named, date, how it was done, remarks, signature. */
export function assessorsBox(width: number, press: Press, learner = ""): Block {
  const { words } = press
  const said = words.sheets.handout
  const heightMm = 5 * fillInMm
  const middle = width / 2
  const right = width - padMm
  const nameRoomMm = middle - 2 * padMm - nameMm
  const field = (label: string, from: number, to: number, row: number, labelMm: number): Item[] =>
    fillIn(label, { from, lineFrom: from + labelMm, to }, row * fillInMm)
  const tick = (label: string, x: number): Item[] => [
    box(x, 2 * fillInMm - 5.4),
    letters(label, [x + besideBoxMm, 2 * fillInMm - 2], type.body),
  ]
  return {
    heightMm: heightMm + 1,
    items: [
      strokes([rectangle(0, 0.5, width, heightMm)], rulePt.medium, true),
      ...field(said.student, padMm, middle - padMm, 1, nameMm),
      ...(learner ? [letters(shorten(learner, nameRoomMm, type.strong, press), nameAt, type.strong)] : []),
      ...field(said.date, middle, right, 1, 12),
      ...tick(said.unaided, padMm),
      ...tick(said.withHelp, padMm + 48),
      ...tick(said.notYet, padMm + 88),
      ...field(said.remarks, padMm, right, 3, 18),
      ...field("", padMm, right, 4, 0),
      ...field(said.assessorName, padMm, middle - padMm, 5, 32),
      ...field(said.signature, middle, right, 5, 20),
    ],
  }
}
