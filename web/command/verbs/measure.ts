import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { figuresOf, measured } from "../../core/figures/measured"
import { sideOf } from "../../core/placement/places"
import { readPlan } from "../input/openFile"
import { done, refuse, type Verb } from "../input/verb"

export const measure: Verb = {
  usage: "FILE",
  takesFile: true,
  options: [],
  run(request) {
    const read = readPlan(request)
    return read.ok ? done(measuresOf(read.plan)) : refuse(...read.problems)
  },
}

function measuresOf(plan: Plan) {
  const { totals, overlaps, takenTwice } = measured(plan)
  let order = 0
  const sections = plan.sections.map((section) => ({
    id: section.id,
    number: isFoil(section) ? section.mapNumber : null,
    order: isFoil(section) ? ++order : null,
    side: sideOf(section),
    kind: section.kind,
    ...figuresOf(section, plan),
  }))
  return {
    sections,
    totals: { ...totals, hairs: totals.hairs.mid },
    takenTwice,
    overlaps: overlaps.map(({ earlier, later, areaCm2 }) => ({
      earlier: earlier.id,
      later: later.id,
      areaCm2,
    })),
  }
}
