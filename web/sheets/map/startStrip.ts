import type { Foil } from "../../../geometry/section/section"
import type { Growth } from "../../core/regrowth/growth"
import { strandMarks } from "../../drawing/strandMarks"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import { type Called, foilsText } from "../setting/foilsText"
import type { Press } from "../setting/press"
import { letters, type, widthMm, wrap } from "../setting/typesetting"
import { markItems } from "../views/viewItems"

/** Where product starts and to where, and the foils that have it so. */
export type Start = Called & {
  startMm: number
  strand: Foil["strand"]
  /** Of hair lightened before: from where to where product goes, mm from the scalp, and where that hair begins. */
  lightened?: { coat: { fromMm: number; toMm: number }; begins: Growth }
}

const rowMm = 5.6
const strandMm = 42
const middleMm = 2.4
const tailMm = 6
const textLeft = strandMm + 3
/** The line that product must not pass reaches further up than the coat. */
const lineMiddleMm = 4
const lineTextMm = 4.4

/**
 * The first of each strand at life size, from the scalp: thin where it is left, broad where product goes; hatched behind the
 * line that product must not pass.
 */
export const startStrips = (starts: readonly Start[], width: number, press: Press): Block[] =>
  starts.map((start) =>
    start.lightened ? lightenedRow(start, start.lightened, width, press) : startRow(start, width, press),
  )

function startRow(start: Start, width: number, press: Press): Block {
  const { startMm, strand, ...foils } = start
  // A share of the strand lies further out than this strip reaches: it is drawn as far out as there is room.
  const fromMm = Math.min(strand.from > 0 ? strandMm : startMm, strandMm - 2 * tailMm)
  const toMm = strand.to < 1 ? strandMm - tailMm : strandMm
  const text = startText(start, press)
  const foilsLeft = textLeft + widthMm(text, type.strong, press) + 2
  return {
    heightMm: rowMm,
    items: [
      ...drawn({ coat: { fromMm, toMm }, begins: null }, strandMm, middleMm),
      letters(text, [textLeft, 3.6], type.strong),
      letters(foilsText(foils, width - foilsLeft, type.small, press), [foilsLeft, 3.6], type.small),
    ],
  }
}

/** As long as the column is wide, since new growth may be longer than the others' strips; the words stand under it. */
function lightenedRow(
  start: Start,
  { coat, begins }: NonNullable<Start["lightened"]>,
  width: number,
  press: Press,
): Block {
  const { startMm: _, strand: __, lightened: ___, ...foils } = start
  const text = startText(start, press)
  const foilsLeft = widthMm(text, type.strong, press) + 2
  const said = press.words.sheets.map.ruler.notPast({ low: begins.lowMm, high: begins.highMm })
  const lines = wrap(said, width, type.small, press)
  const firstMm = 2 * lineMiddleMm + 2.6
  return {
    heightMm: firstMm + lineTextMm * lines.length + 2,
    items: [
      ...drawn({ coat, begins }, width, lineMiddleMm),
      letters(text, [0, firstMm], type.strong),
      letters(foilsText(foils, width - foilsLeft, type.small, press), [foilsLeft, firstMm], type.small),
      ...lines.map((line, i) => letters(line, [0, firstMm + lineTextMm * (i + 1)], type.small)),
    ],
  }
}

function startText({ startMm, strand }: Start, press: Press): string {
  const said = press.words.sheets.map
  const isToEnds = strand.from === 0 && strand.to === 1
  return isToEnds ? said.ruler.depth(startMm) : said.table.start(startMm, strand)
}

function drawn(strand: Parameters<typeof strandMarks>[0], lengthMm: number, downMm: number): Item[] {
  const { tones, lines } = markItems(strandMarks(strand, lengthMm), ([x, y]) => [x, downMm - y])
  return [...lines, ...tones]
}
