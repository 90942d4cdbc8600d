import { overlapCm2 } from "../../../../geometry/section/overlap"
import type { Section } from "../../../../geometry/section/section"
import { type Edit, refuse } from "../../document/edit"
import { limits } from "../../fields/limits"
import { headOf } from "../../figures/measured"
import { leastToldCm2 } from "../../figures/overlaps"
import { replaceSections } from "./replaceSections"

const stepMm = 0.5

/** Makes a section thinner until it no longer takes the hair of another, or says that thinning cannot do it. */
export const clearOverlap =
  (id: string, otherId: string): Edit =>
  (plan) => {
    const [section, other] = [id, otherId].map((wanted) => plan.sections.find((each) => each.id === wanted))
    if (!section || !other) return plan
    const head = headOf(plan)
    for (let byMm = stepMm; byMm < limits.depthMm.high; byMm += stepMm) {
      const thinner = thinned(section, byMm)
      if (!thinner) break
      if (overlapCm2(thinner, other, head) < leastToldCm2(thinner, head))
        return replaceSections([id], (each) => ({ ...each, depthMm: thinner.depthMm }))(plan)
    }
    return refuse({ code: "thinning-does-not-part" })
  }

function thinned(section: Section, byMm: number): Section | null {
  const { start, end } = section.depthMm
  const depthMm = { start: start - byMm, end: end - byMm }
  return Math.min(depthMm.start, depthMm.end) >= limits.depthMm.low ? { ...section, depthMm } : null
}
