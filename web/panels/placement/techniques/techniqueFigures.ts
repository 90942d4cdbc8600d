import type { Range } from "../../../../geometry/hair/tradeFigures"
import { isFoil } from "../../../../geometry/section/section"
import type { Technique } from "../../../../presets/techniques/technique"
import { usualPace } from "../../../core/chair/schedulePace"
import type { Plan } from "../../../core/document/schema"
import { usualTiming } from "../../../core/document/usualTiming"
import { techniqueSections } from "../../../core/edits/lay/layTechnique"
import { measured } from "../../../core/figures/measured"
import { countText, gramsRange } from "../../../core/text/figureText"

/** What a technique comes to by itself on a plan's head, hair and pace. */
export type TechniqueFigures = {
  foils: number
  productG: Range
  placeMin: Range
  /** Sections for which this head has no room: they are left out. */
  withoutRoom: number
}

export function techniqueFigures(technique: Technique, plan: Plan): TechniqueFigures {
  const empty = { ...plan, sections: [] }
  const laid = techniqueSections(technique, empty)
  const foils = laid.filter(isFoil)
  const { skill } = plan.timing ?? usualTiming
  const paces = foils.map(({ kind }) => usualPace(skill, kind))
  const sum = (end: keyof Range) => paces.reduce((total, pace) => total + pace[end], 0)
  const { foils: sheets, productG } = measured({ ...empty, sections: laid }).totals
  return {
    foils: sheets,
    productG,
    placeMin: { low: sum("low"), mid: sum("mid"), high: sum("high") },
    withoutRoom: sectionCount(technique) - laid.length,
  }
}

const sectionCount = ({ sections }: Technique) =>
  sections.reduce((count, { single }) => count + (single ? 1 : 2), 0)

/** Foils, grams and minutes in words. */
export function figuresWords({ foils, productG, placeMin, withoutRoom }: TechniqueFigures) {
  const minutes = `${Math.round(placeMin.low)}–${Math.round(placeMin.high)} min to place`
  const left = withoutRoom > 0 ? `; no room here for ${countText(withoutRoom, "section")}` : ""
  return `${countText(foils, "foil")}, ${gramsRange(productG)}, ${minutes}${left}`
}
