import { coatLetters } from "../../core/placement/coatCodes"
import type { RecordFoil } from "../../core/record/recordFoils"
import { say } from "../../words/say"
import { type Item, tagged } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { letters, rectangle, rule, rulePt, strokes, type, wrap } from "../setting/typesetting"

/** Where each column of the record's table ends or begins, mm from its left edge. */
const at = { number: 7, what: 11, mix: 68, on: [84, 99], off: [116, 131], looks: 138 } as const
const lineMm = 4.5
const headMm = 10.4
const boxMm = { width: 12, height: 5.2 }

const middleOf = ([planned, real]: readonly [number, number]) => (planned + real - boxMm.width / 2) / 2

/** What stands over the columns, set again on each page. */
export function recordTableHead(width: number, { words }: Press): Block {
  const said = words.sheets.cards.record.heads
  const items = [
    letters(said.number, [at.number, 3.6], type.strong, "right"),
    letters(said.foil, [at.what, 3.6], type.strong),
    letters(said.mix, [at.mix, 3.6], type.strong, "center"),
    letters(said.on, [middleOf(at.on), 3.6], type.strong, "center"),
    letters(said.off, [middleOf(at.off), 3.6], type.strong, "center"),
    ...[at.on, at.off].flatMap(([planned, real]) => [
      letters(said.planned, [planned, 8.1], type.small, "right"),
      letters(said.actual, [real, 8.1], type.small, "right"),
    ]),
    letters(said.checks, [at.looks, 3.6], type.strong),
    rule([0, headMm], [width, headMm], rulePt.medium),
  ]
  return { heightMm: headMm, items }
}

/** One foil: its planned minutes, its real ones or boxes to write them in, and what each look saw. */
export function recordRow(foil: RecordFoil, width: number, press: Press): Block {
  const looks = looksOf(foil, press).flatMap((words) => wrap(words, width - at.looks, type.body, press))
  const said = [press.words.record.foil(foil), ...coatsSaid(foil, press)]
  const names = said.flatMap((words) => wrap(words, at.mix - at.what - 7, type.body, press))
  const rowMm = Math.max(names.length, looks.length) * lineMm + 2.6
  const y = 5
  return {
    heightMm: rowMm,
    items: tagged(
      [
        letters(String(foil.number), [at.number, y], type.strong, "right"),
        ...names.map((line, i) => letters(line, [at.what, y + i * lineMm], type.body)),
        letters(coatLetters(foil.coats), [at.mix, y], type.strong, "center"),
        ...times(at.on, foil.planned?.onMin, foil.real?.onMin, y),
        ...times(at.off, foil.planned?.offMin, foil.real?.offMin ?? undefined, y),
        ...looks.map((line, i) => letters(line, [at.looks, y + i * lineMm], type.body)),
        rule([0, rowMm], [width, rowMm], rulePt.hair),
      ],
      "P",
    ),
  }
}

/** Where each of two mixes is on the strand; of one its letter says all. */
const coatsSaid = ({ coats }: RecordFoil, { figures: t, words: { common } }: Press): string[] =>
  coats.length > 1 ? [t.capital(common.coats(coats))] : []

function looksOf({ real, by, looks }: RecordFoil, { words: { record } }: Press): string[] {
  const onMin = real && real.offMin !== null ? [record.minutesOn(real.offMin - real.onMin)] : []
  return [...onMin, ...(by ? [record.placedBy(by)] : []), ...looks.map((look) => say(record.looks, look))]
}

function times(
  [plannedX, realX]: readonly [number, number],
  planned: number | undefined,
  real: number | undefined,
  y: number,
): Item[] {
  const box = rectangle(realX - boxMm.width + 1, y - 4.3, boxMm.width, boxMm.height)
  return [
    letters(planned === undefined ? "" : String(Math.round(planned)), [plannedX, y], type.body, "right"),
    real === undefined
      ? strokes([box], rulePt.fine, true)
      : letters(String(Math.round(real)), [realX, y], type.strong, "right"),
  ]
}
