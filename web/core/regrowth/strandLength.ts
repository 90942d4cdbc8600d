import { lengthCmAt } from "../../../geometry/hair/hair"
import type { Section } from "../../../geometry/section/section"
import type { Plan } from "../document/schema"
import { figuresFor } from "../figures/figuresFor"
import { headOf } from "../figures/measured"

/** How long the hair of a section is today along its parting, cm: the shortest and the longest. */
export function strandLengthCm(section: Section, plan: Plan): { least: number; most: number } {
  const head = headOf(plan)
  const figures = figuresFor(section, plan)
  const lengths = section.parting.map((at) => lengthCmAt(head, plan.hair, figures, head.surface.pointAt(at)))
  return { least: Math.min(...lengths), most: Math.max(...lengths) }
}
