import type { Plan } from "../../core/document/schema"
import type { PaperView } from "../../drawing/headDrawing"
import type { Block } from "../setting/block"
import { writingLines } from "../setting/labelledRow"
import type { Press } from "../setting/press"
import { beside, lowered, stack } from "../setting/stack"
import { letters, type } from "../setting/typesetting"
import { blankHeads } from "./stepViews"

const views: readonly (readonly PaperView[])[] = [
  ["right", "front", "left"],
  ["back", "top"],
]
/** Of life size: the largest, and the least that a hand can draw into. */
const largest = 0.225
const least = 0.15
const gapMm = 7
const overLinesMm = 8

type Setting = { widthMm: number; mirror: boolean; press: Press }

/**
 * The head from five sides to draw on, with lines for whose drawing it is and when it was made; as large as a height lets it
 * be, and as large as it comes where not even the smallest has room there.
 */
export function practiceHeads(plan: Plan, setting: Setting, roomMm: number): Block {
  const [large, small] = [largest, least].map((scale) => drawnAt(scale, plan, setting))
  if (large.heightMm <= roomMm || small.heightMm > roomMm) return large
  const share = (roomMm - small.heightMm) / (large.heightMm - small.heightMm)
  return drawnAt(least + share * (largest - least), plan, setting)
}

function drawnAt(scale: number, plan: Plan, setting: Setting): Block {
  const eachMm = setting.widthMm / views[0].length
  const [first, second] = views.map((names) =>
    blankHeads(names, plan, { ...setting, widthMm: names.length * eachMm, scale }),
  )
  const { student, date } = setting.press.words.sheets.handout
  const lines = stack([student, date].map((label) => toFill(label, eachMm - gapMm)))
  return stack([
    first,
    beside(
      { block: second, leftMm: 0 },
      { block: lowered(lines, overLinesMm), leftMm: setting.widthMm - eachMm + gapMm },
    ),
  ])
}

/** A line to write on over the name of what belongs there. */
const toFill = (label: string, widthMm: number): Block => {
  const line = writingLines(1, widthMm)
  return stack([line, { heightMm: overLinesMm, items: [letters(label, [0, 4.4], type.body)] }])
}
