import { type Foil, isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { sectionNameOf } from "../../core/document/sectionNameCode"
import { type WorkingTotals, workingTotals } from "../../core/figures/working/workingTotals"
import { byWorkingSection, crossingsOf } from "../../core/figures/workingSectionsBelonging"
import { inks, type TintName, tintOf } from "../../drawing/inks"
import type { Words } from "../../words/en/words"
import { say } from "../../words/say"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import type { Press } from "../setting/press"
import { letters, rectangle, type, wrap } from "../setting/typesetting"

const textLeft = 9
const lineMm = 4.4

/** The working sections in the order they are worked: number, name, foils, product, minutes; then those without foils, and what crosses. */
export function workingBlocks(plan: Plan, { width, press }: { width: number; press: Press }): Block[] {
  return workingRows(plan, press).map(({ sign, words, wash }) => {
    const lines = wrap(words, width - textLeft, type.small, press)
    return {
      heightMm: lines.length * lineMm,
      items: [
        ...(wash ? [washItem(wash)] : []),
        letters(sign, [0, 3.2], type.smallStrong),
        ...lines.map((line, i) => letters(line, [textLeft, 3.2 + i * lineMm], type.small)),
      ],
    }
  })
}

/** The wash of the map under the number, from edge to edge of the column it stands in. */
const washItem = (wash: TintName): Item => ({
  kind: "area",
  path: rectangle(-0.6, 0, textLeft - 0.6, lineMm),
  ink: inks[wash].color,
})

type Row = { sign: string; words: string; wash?: TintName }

function workingRows(plan: Plan, { words }: Press): Row[] {
  const foilsOf = byWorkingSection(plan).map(({ sections }) => sections.filter(isFoil))
  const totals = workingTotals(plan)
  const worked = totals.flatMap((total, i): Row[] =>
    foilsOf[i].length > 0
      ? [
          {
            sign: total.working.numeral,
            words: rowWords(total, foilsOf[i], words),
            wash: tintOf(total.working.place),
          },
        ]
      : [],
  )
  const empty = totals
    .filter((_, i) => foilsOf[i].length === 0)
    .map(({ working }) => `${working.numeral} ${words.common.workingTitle(working.name)}`)
  const said = words.sheets.map.working
  const crossing = crossingsOf(plan).map(({ section }) =>
    say(words.common.sectionName, sectionNameOf(section)),
  )
  return [
    ...worked,
    ...(empty.length > 0 ? [{ sign: "–", words: said.noFoils(empty) }] : []),
    ...(crossing.length > 0 ? [{ sign: "×", words: said.crossing(crossing) }] : []),
  ]
}

const rowWords = (
  { working: { name }, foils, placeMin }: WorkingTotals,
  own: readonly Foil[],
  { sheets, common }: Words,
): string =>
  sheets.map.working.row({
    name: common.workingTitle(name),
    foils: own.map(({ mapNumber }) => mapNumber),
    productG: foils.productG,
    placeMin: placeMin ?? null,
  })
