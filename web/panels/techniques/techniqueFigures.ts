import { isFoil } from "../../../geometry/section/section"
import type { Range } from "../../../geometry/tradeFigures"
import type { Technique } from "../../../presets/techniques/technique"
import { tradeFigures } from "../../../presets/tradeFigures"
import { techniqueSections } from "../../plan/edits/layTechnique"
import { countText, gramsRange } from "../../plan/figureText"
import { figuresOf } from "../../plan/measured"
import type { Plan } from "../../plan/schema"
import { totalsOf } from "../../plan/totals"
import { usualTiming } from "../../plan/usualTiming"
import { usualPace } from "../../service/schedulePace"

/** What a technique comes to by itself on a plan's head, hair and pace. */
export type TechniqueFigures = { foils: number; productG: Range; placeMin: Range }

export function techniqueFigures(technique: Technique, plan: Plan): TechniqueFigures {
  const empty = { ...plan, sections: [] }
  const foils = techniqueSections(technique, empty).filter(isFoil)
  const { skill } = plan.timing ?? usualTiming
  const paces = foils.map(({ kind }) => usualPace(skill, kind))
  const sum = (end: keyof Range) => paces.reduce((total, pace) => total + pace[end], 0)
  const figures = foils.map((foil) => figuresOf(foil, empty))
  const { foils: sheets, productG } = totalsOf(figures, tradeFigures)
  return { foils: sheets, productG, placeMin: { low: sum("low"), mid: sum("mid"), high: sum("high") } }
}

/** Foils, grams and minutes in words. */
export function figuresWords({ foils, productG, placeMin }: TechniqueFigures) {
  const minutes = `${Math.round(placeMin.low)}–${Math.round(placeMin.high)} min to place`
  return `${countText(foils, "foil")}, ${gramsRange(productG)}, ${minutes}`
}
