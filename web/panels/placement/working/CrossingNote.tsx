import type { Section } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { workingSectionsOf } from "../../../core/figures/workingSections"
import { crossingOf } from "../../../core/figures/workingSectionsBelonging"
import { CrossingFixes } from "./CrossingFixes"
import { CrossingWords } from "./CrossingWords"

/** Says of the selected sections which cross a dividing parting, with the cures. */
export function CrossingNote({ sections, plan }: { sections: readonly Section[]; plan: Plan }) {
  if (workingSectionsOf(plan).length === 0) return null
  const crossings = sections.flatMap((section) => crossingOf(section, plan) ?? [])
  if (crossings.length === 0) return null
  return (
    <div className="crossing-note">
      {crossings.map((crossing) => (
        <CrossingWords key={crossing.section.id} crossing={crossing} />
      ))}
      <CrossingFixes sections={crossings.map(({ section }) => section)} />
    </div>
  )
}
