import type { Foil } from "../../../geometry/section/section"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import { type Called, foilsText } from "../setting/foilsText"
import type { Press } from "../setting/press"
import { ink, letters, rectangle, rule, rulePt, strokes, type, widthMm } from "../setting/typesetting"

/** Where product starts and to where, and the foils that have it so. */
export type Start = Called & { startMm: number; strand: Foil["strand"] }

const rowMm = 5.6
const strandMm = 42
const middleMm = 2.4
const coatMm = 1.8
const tailMm = 6
const textLeft = strandMm + 3

/** The first of each strand at life size, from the scalp: thin where it is left, broad where product goes. */
export const startStrips = (starts: readonly Start[], width: number, press: Press): Block[] =>
  starts.map((start) => startRow(start, width, press))

function startRow({ startMm, strand, ...foils }: Start, width: number, press: Press): Block {
  const said = press.words.sheets.map
  // A share of the strand lies further out than this strip reaches: it is drawn as far out as there is room.
  const fromMm = Math.min(strand.from > 0 ? strandMm : startMm, strandMm - 2 * tailMm)
  const toMm = strand.to < 1 ? strandMm - tailMm : strandMm
  const isToEnds = strand.from === 0 && strand.to === 1
  const text = isToEnds ? said.ruler.depth(startMm) : said.table.start(startMm, strand)
  const foilsLeft = textLeft + widthMm(text, type.strong, press) + 2
  const coat: Item = {
    kind: "area",
    path: rectangle(fromMm, middleMm - coatMm / 2, toMm - fromMm, coatMm),
    ink,
  }
  return {
    heightMm: rowMm,
    items: [
      strokes(
        [
          [
            [0, middleMm - 2],
            [0, middleMm + 2],
          ],
        ],
        rulePt.bold,
      ),
      rule([0, middleMm], [strandMm, middleMm], rulePt.fine),
      coat,
      letters(text, [textLeft, 3.6], type.strong),
      letters(foilsText(foils, width - foilsLeft, type.small, press), [foilsLeft, 3.6], type.small),
    ],
  }
}
