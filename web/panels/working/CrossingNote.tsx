import type { Section } from "../../../geometry/section/section"
import type { Plan } from "../../plan/schema"
import { workingSectionsOf } from "../../plan/workingSections"
import { crossingOf, crossingWords } from "../../plan/workingSectionsBelonging"
import { CrossingCures } from "./CrossingCures"

/** Says of the selected sections which cross a dividing parting, with the cures. */
export function CrossingNote({ sections, plan }: { sections: readonly Section[]; plan: Plan }) {
  if (workingSectionsOf(plan).length === 0) return null
  const crossings = sections.flatMap((section) => crossingOf(section, plan) ?? [])
  if (crossings.length === 0) return null
  return (
    <div className="crossing-note">
      {crossings.map((crossing) => (
        <p key={crossing.section.id}>{crossingWords(crossing)}</p>
      ))}
      <CrossingCures sections={crossings.map(({ section }) => section)} />
    </div>
  )
}
