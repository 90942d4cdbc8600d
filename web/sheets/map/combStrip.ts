import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import { type Called, foilsText } from "../setting/foilsText"
import type { Press } from "../setting/press"
import { spreadAlong } from "../setting/spreadAlong"
import { ink, letters, rectangle, rulePt, strokes, type, widthMm } from "../setting/typesetting"

/** A depth of the plan, mm, and the foils that have it. */
export type Depth = { depthMm: number } & Called

/** The comb is also the measure of the printer: 50 mm long on paper that is printed at full size. */
export const combMm = 50
const spineMm = 2.6
const toothMm = 4.2
const fifthToothMm = 6
const depthToothMm = 9
const labelTopMm = 13.2
const apartMm = 3

/**
 * A comb at life size: a tooth each millimetre, long teeth at the depths of this plan. Held to the head it shows
 * how far in to part.
 */
export function combStrip(depths: readonly Depth[], width: number, press: Press): Block {
  const said = press.words.sheets.map.ruler
  const shown = depths.filter(({ depthMm }) => depthMm <= combMm)
  const names = depthLabels(shown, width, press)
  const centres = spreadAlong(
    shown.map(({ depthMm }) => depthMm),
    names.map(({ widthMm }) => widthMm + apartMm),
    [-apartMm / 2, width + apartMm / 2],
  )
  const leaders = shown.map(({ depthMm }, i) => [
    [depthMm, depthToothMm] as const,
    [centres[i], labelTopMm - 0.6] as const,
  ])
  const items: Item[] = [
    { kind: "area", path: rectangle(0, 0, combMm, spineMm), ink },
    strokes(everyMillimetre(), rulePt.fine),
    strokes(
      shown.map(({ depthMm }) => tooth(depthMm, depthToothMm)),
      rulePt.bold,
    ),
    strokes(leaders, rulePt.fine),
    letters(said.title, [combMm + 4, 2.9], type.heading),
    letters(said.check[0], [combMm + 4, 6.6], type.small),
    letters(said.check[1], [combMm + 4, 10.2], type.small),
    ...names.flatMap(({ lines }, i) =>
      lines.map((line, row) =>
        letters(
          line,
          [centres[i], labelTopMm + 3 + 4.2 * row],
          row === 0 ? type.strong : type.small,
          "center",
        ),
      ),
    ),
  ]
  return { heightMm: labelTopMm + 8.2, items }
}

const everyMillimetre = () =>
  Array.from({ length: combMm + 1 }, (_, mm) => tooth(mm, mm % 5 === 0 ? fifthToothMm : toothMm))

const tooth = (x: number, length: number) => [[x, spineMm] as const, [x, length] as const]

/** The labels of the depths; without their foils, which the table tells too, where not all have room side by side. */
function depthLabels(depths: readonly Depth[], width: number, press: Press) {
  const full = depths.map((depth) => depthLabel(depth, width / Math.max(depths.length, 1), press))
  const takenMm = full.reduce((sum, { widthMm }) => sum + widthMm + apartMm, 0)
  if (takenMm <= width + apartMm) return full
  return full.map(({ lines: [depth] }) => ({
    lines: [depth],
    widthMm: widthMm(depth, type.strong, press),
  }))
}

/** The depth, and under it the foils that have it, or their count where the room is too narrow. */
function depthLabel({ depthMm, foils, piece }: Depth, room: number, press: Press) {
  const under = foilsText({ foils, piece }, room - apartMm, type.small, press)
  const lines = [press.words.sheets.map.ruler.depth(depthMm), under]
  return {
    lines,
    widthMm: Math.max(widthMm(lines[0], type.strong, press), widthMm(under, type.small, press)),
  }
}
