import type { Section } from "../../../geometry/section/section"
import { type Technique, techniqueOf } from "../../../presets/techniques/technique"
import { techniques } from "../../../presets/techniques/techniques"
import type { Plan } from "../document/schema"
import { techniqueSections } from "../edits/lay/layTechnique"
import { isAlike } from "./teachingSteps"

const apart = 1e-4

/** The technique of the house that a plan holds as it is laid, and nothing else; null where anything was changed. */
export function techniqueLaid(plan: Plan): Technique | null {
  return techniques.map((preset) => techniqueOf(preset)).find((each) => isLaid(each, plan)) ?? null
}

function isLaid(technique: Technique, plan: Plan): boolean {
  const { sections } = plan
  const most = technique.sections.length * 2
  if (sections.length === 0 || sections.length > most) return false
  const laid = techniqueSections(technique, { ...plan, sections: [] })
  return laid.length === sections.length && laid.every((each, i) => isSame(each, sections[i]))
}

const withMix = (section: Section, { mix }: { mix: string }): Section => ({ ...section, mix }) as Section

const isSame = (one: Section, other: Section) =>
  isAlike("mix" in other ? withMix(one, other) : one, other) &&
  one.parting.length === other.parting.length &&
  one.parting.every(([u, v], i) => {
    const [otherU, otherV] = other.parting[i]
    return Math.hypot(u - otherU, v - otherV) < apart
  })
