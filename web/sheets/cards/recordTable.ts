import type { RecordFoil } from "../../core/record/recordFoils"
import type { Fonts } from "../pens/fontFile"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import { letters, rectangle, rule, rulePt, shorten, strokes, type, wrap } from "../setting/typesetting"

/** Where each column of the record's table ends or begins, mm from its left edge. */
const at = { number: 7, what: 11, mix: 68, on: [84, 99], off: [116, 131], looks: 138 } as const
const lineMm = 4.5
const headMm = 10.4
const boxMm = { width: 12, height: 5.2 }

const middleOf = ([planned, real]: readonly [number, number]) => (planned + real - boxMm.width / 2) / 2

/** What stands over the columns, set again on each page. */
export const recordTableHead = (width: number): Block => ({
  heightMm: headMm,
  items: [
    letters("No.", [at.number, 3.6], type.strong, "right"),
    letters("Foil", [at.what, 3.6], type.strong),
    letters("Mix", [at.mix, 3.6], type.strong, "center"),
    letters("On", [middleOf(at.on), 3.6], type.strong, "center"),
    letters("Off", [middleOf(at.off), 3.6], type.strong, "center"),
    ...[at.on, at.off].flatMap(([planned, real]) => [
      letters("plan", [planned, 8.1], type.small, "right"),
      letters("real", [real, 8.1], type.small, "right"),
    ]),
    letters("Minutes on, and looks", [at.looks, 3.6], type.strong),
    rule([0, headMm], [width, headMm], rulePt.medium),
  ],
})

/** One foil: its planned minutes, its real ones or boxes to write them in, and what each look saw. */
export function recordRow(foil: RecordFoil, width: number, fonts: Fonts): Block {
  const looks = looksOf(foil).flatMap((words) => wrap(words, width - at.looks, type.body, fonts))
  const rowMm = Math.max(1, looks.length) * lineMm + 2.6
  const y = 5
  return {
    heightMm: rowMm,
    items: [
      letters(String(foil.number), [at.number, y], type.strong, "right"),
      letters(shorten(foil.what, at.mix - at.what - 5, type.body, fonts), [at.what, y], type.body),
      letters(foil.mix, [at.mix, y], type.strong, "center"),
      ...times(at.on, foil.planned?.onMin, foil.real?.onMin, y),
      ...times(at.off, foil.planned?.offMin, foil.real?.offMin ?? undefined, y),
      ...looks.map((line, i) => letters(line, [at.looks, y + i * lineMm], type.body)),
      rule([0, rowMm], [width, rowMm], rulePt.hair),
    ],
  }
}

function looksOf({ real, looks }: RecordFoil): string[] {
  const onMin = real && real.offMin !== null ? [`${Math.round(real.offMin - real.onMin)} min on`] : []
  return [...onMin, ...looks]
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
