import type { Stitching } from "../../../geometry/section/section"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import { foilsText } from "../setting/foilsText"
import type { Press } from "../setting/press"
import { beside } from "../setting/stack"
import { ink, letters, rectangle, rulePt, strokes, type } from "../setting/typesetting"

/** A row of stitches of the plan, mm, and the foils that have it. */
export type Stitches = Stitching & { foils: readonly number[] }

const rowMm = 22
const textLeft = 24.5
const textMm = 8.4

/** Rows of stitches at life size, two abreast. */
export function stitchStrips(rows: readonly Stitches[], width: number, press: Press): Block[] {
  const cells = rows.map((row) => stitchCell(row, width / 2, press))
  const pairs = cells.flatMap((_, i) => (i % 2 === 0 ? [cells.slice(i, i + 2)] : []))
  return pairs.map((pair) => beside(...pair.map((block, i) => ({ block, leftMm: (i * width) / 2 }))))
}

/** Each block is hair taken, hanging from the parting to its dip. */
function stitchCell({ stitchMm, gapMm, dipMm, foils }: Stitches, width: number, press: Press): Block {
  const pitch = stitchMm + gapMm
  const count = Math.max(1, Math.floor((rowMm + gapMm) / pitch))
  const teeth = Array.from(
    { length: count },
    (_, i): Item => ({ kind: "area", path: rectangle(i * pitch, 0, stitchMm, dipMm), ink }),
  )
  const parting = [[0, 0] as const, [count * pitch - gapMm, 0] as const]
  const room = width - textLeft - 1
  return {
    heightMm: Math.max(dipMm, textMm) + 2.6,
    items: [
      strokes([parting], rulePt.medium),
      ...teeth,
      letters(press.words.sheets.map.ruler.stitch({ stitchMm, gapMm, dipMm }), [textLeft, 3], type.strong),
      letters(foilsText({ foils }, room, type.small, press), [textLeft, 7.2], type.small),
    ],
  }
}
