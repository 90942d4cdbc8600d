import { type Foil, isFoil } from "../../../geometry/section/section"
import { gramsRange } from "../../plan/figureText"
import type { Plan } from "../../plan/schema"
import { sectionName } from "../../plan/sectionName"
import { byWorkingSection, crossingsOf } from "../../plan/workingSectionsBelonging"
import { type WorkingTotals, workingTotals } from "../../service/workingTotals"
import type { Fonts } from "../fontFile"
import type { Block } from "./block"
import { letters, type, wrap } from "./typesetting"

const textLeft = 9
const lineMm = 4.4

/** The working sections in the order they are worked: number, name, foils, product, minutes; then those without foils, and what crosses. */
export function workingBlocks(plan: Plan, { width, fonts }: { width: number; fonts: Fonts }): Block[] {
  return workingRows(plan).map(([sign, words]) => {
    const lines = wrap(words, width - textLeft, type.small, fonts)
    return {
      heightMm: lines.length * lineMm,
      items: [
        letters(sign, [0, 3.2], type.smallStrong),
        ...lines.map((line, i) => letters(line, [textLeft, 3.2 + i * lineMm], type.small)),
      ],
    }
  })
}

type Row = readonly [sign: string, words: string]

function workingRows(plan: Plan): Row[] {
  const foilsOf = byWorkingSection(plan).map(({ sections }) => sections.filter(isFoil))
  const totals = workingTotals(plan)
  const worked = totals.flatMap((total, i): Row[] =>
    foilsOf[i].length > 0 ? [[total.working.numeral, rowWords(total, foilsOf[i])]] : [],
  )
  const empty = totals
    .filter((_, i) => foilsOf[i].length === 0)
    .map(({ working }) => `${working.numeral} ${working.name}`)
  const crossing = crossingsOf(plan).map(({ section }) => sectionName(section))
  return [
    ...worked,
    ...(empty.length > 0 ? [["–", `${empty.join(", ")}: no foils`] as const] : []),
    ...(crossing.length > 0 ? [["×", `In two working sections: ${crossing.join(", ")}`] as const] : []),
  ]
}

function rowWords({ working: { name }, foils, placeMin }: WorkingTotals, own: readonly Foil[]): string {
  const numbers = own.map(({ mapNumber }) => mapNumber).join(", ")
  const minutes = placeMin ? `, ${Math.round(placeMin.low)}–${Math.round(placeMin.high)} min` : ""
  return `${name}: ${own.length === 1 ? "foil" : "foils"} ${numbers}; ${gramsRange(foils.productG)}${minutes}`
}
