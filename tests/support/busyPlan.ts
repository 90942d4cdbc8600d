import { hairlineParting } from "../../geometry/parting/parting"
import type { Section, SectionKind } from "../../geometry/section/section"
import { newPlan } from "../../web/core/document/newPlan"
import { newSection } from "../../web/core/document/newSection"
import type { Plan } from "../../web/core/document/schema"
import { headOf } from "../../web/core/figures/measured"

const kinds: readonly SectionKind[] = ["slice", "weave", "slice", "backcomb"]
const bandsASide = 10
const lengthMm = 52

/** A plan with so many sections, in rows behind the hairline from ear to ear, as a full head of fine work has. */
export function busyPlan(count: number): Plan {
  const plan = { ...newPlan(new Date("2026-03-09T12:00:00Z")), name: `Bench ${count}` }
  const head = headOf(plan)
  const sections: Section[] = []
  for (let i = 0; sections.length < count; i++) {
    const fromAlongMm = ((i % bandsASide) - bandsASide / 2) * (lengthMm / 2.2) + (i % 3)
    const behindMm = 6 + (Math.floor(i / bandsASide) % 14) * 6
    const made = hairlineParting(head, { fromAlongMm, toAlongMm: fromAlongMm + lengthMm, behindMm })
    if ("refused" in made) continue
    const section = newSection(kinds[i % kinds.length], made.parting, { ...plan, sections })
    sections.push(section)
  }
  return { ...plan, sections }
}
