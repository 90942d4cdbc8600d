import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { ink, letters, rectangle, rulePt, strokes, type } from "../setting/typesetting"

export const barMm = 50
const fields = 5
const topMm = 3.6
const thickMm = 1.8

/** 50 mm on the head as the views show it: five fields, dark and light by turns. */
export function scaleBar(scale: number, { words }: Press): Block {
  const lengthMm = barMm * scale
  const fieldMm = lengthMm / fields
  return {
    heightMm: topMm + thickMm + 0.4,
    items: [
      strokes([rectangle(0, topMm, lengthMm, thickMm)], rulePt.fine, true),
      ...[0, 2, 4].map(
        (i): Item => ({ kind: "area", path: rectangle(i * fieldMm, topMm, fieldMm, thickMm), ink }),
      ),
      letters(words.sheets.map.ruler.scale, [lengthMm + 3, topMm + thickMm + 0.2], type.small),
    ],
  }
}
