import { type Foil, isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { type WorkingTotals, workingTotals } from "../../core/figures/working/workingTotals"
import { byWorkingSection, crossingsOf } from "../../core/figures/workingSectionsBelonging"
import { gramsRange } from "../../core/text/figureText"
import { sectionName } from "../../core/text/sectionName"
import { inks, type TintName, tintOf } from "../../drawing/inks"
import type { Fonts } from "../pens/fontFile"
import type { Item } from "../pens/page"
import type { Block } from "../setting/block"
import { letters, rectangle, type, wrap } from "../setting/typesetting"

const textLeft = 9
const lineMm = 4.4

/** The working sections in the order they are worked: number, name, foils, product, minutes; then those without foils, and what crosses. */
export function workingBlocks(plan: Plan, { width, fonts }: { width: number; fonts: Fonts }): Block[] {
  return workingRows(plan).map(({ sign, words, wash }) => {
    const lines = wrap(words, width - textLeft, type.small, fonts)
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

function workingRows(plan: Plan): Row[] {
  const foilsOf = byWorkingSection(plan).map(({ sections }) => sections.filter(isFoil))
  const totals = workingTotals(plan)
  const worked = totals.flatMap((total, i): Row[] =>
    foilsOf[i].length > 0
      ? [
          {
            sign: total.working.numeral,
            words: rowWords(total, foilsOf[i]),
            wash: tintOf(total.working.place),
          },
        ]
      : [],
  )
  const empty = totals
    .filter((_, i) => foilsOf[i].length === 0)
    .map(({ working }) => `${working.numeral} ${working.name}`)
  const crossing = crossingsOf(plan).map(({ section }) => sectionName(section))
  return [
    ...worked,
    ...(empty.length > 0 ? [{ sign: "–", words: `${empty.join(", ")}: no foils` }] : []),
    ...(crossing.length > 0 ? [{ sign: "×", words: `In two working sections: ${crossing.join(", ")}` }] : []),
  ]
}

function rowWords({ working: { name }, foils, placeMin }: WorkingTotals, own: readonly Foil[]): string {
  const numbers = own.map(({ mapNumber }) => mapNumber).join(", ")
  const minutes = placeMin ? `, ${Math.round(placeMin.low)}–${Math.round(placeMin.high)} min` : ""
  return `${name}: ${own.length === 1 ? "foil" : "foils"} ${numbers}; ${gramsRange(foils.productG)}${minutes}`
}
