import type { Range } from "../../../../geometry/hair/tradeFigures"
import { isFoil } from "../../../../geometry/section/section"
import type { Technique } from "../../../../presets/techniques/technique"
import type { Plan } from "../../../core/document/schema"
import { techniqueSections } from "../../../core/edits/lay/layTechnique"
import { figuresOf, measured } from "../../../core/figures/measured"
import { choicesOfPlan } from "../../../core/schedule/choicesOfPlan"
import { placing } from "../../../core/schedule/scheduleFromPlan"

/** What a technique comes to by itself on a plan's head, hair and pace. */
export type TechniqueFigures = {
  foils: number
  /** Grams, the least and the most. */
  low: number
  high: number
  /** Minutes to place them by the clock's own pace, the least and the most. */
  minLow: number
  minHigh: number
  /** Sections for which this head has no room: they are left out. */
  withoutRoom: number
}

export function techniqueFigures(technique: Technique, plan: Plan): TechniqueFigures {
  const empty = { ...plan, sections: [] }
  const laid = techniqueSections(technique, empty)
  const onHead = { ...empty, sections: laid }
  const choices = choicesOfPlan(plan)
  const paces = laid
    .filter(isFoil)
    .map((foil) => placing(foil.kind, Math.max(1, figuresOf(foil, onHead).foils), choices))
  const sum = (end: keyof Range) => paces.reduce((total, pace) => total + pace[end], 0)
  const { foils, productG } = measured(onHead).totals
  return {
    foils,
    low: productG.low,
    high: productG.high,
    minLow: sum("low"),
    minHigh: sum("high"),
    withoutRoom: Math.max(0, sectionCount(technique) - laid.length),
  }
}

const sectionCount = ({ sections }: Technique) =>
  sections.reduce((count, { single }) => count + (single ? 1 : 2), 0)
