import type { ReactNode } from "react"
import type { Section } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { totalsAmong } from "../../../core/figures/measured"
import type { WorkingSection } from "../../../core/figures/workingSections"
import { workingSectionsOf } from "../../../core/figures/workingSections"
import { byWorkingSection, crossingOf } from "../../../core/figures/workingSectionsBelonging"
import { planStore } from "../../../session/planStore"
import { sessionStore } from "../../../session/sessionStore"
import { useSession } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import { WorkingNumeral } from "./WorkingNumeral"

type Group = { working: WorkingSection | null; sections: readonly Section[] }

/** The sections as the list shows them: under their working sections, or all together. */
function listGroups(plan: Plan, groupList: boolean): Group[] {
  if (!groupList || workingSectionsOf(plan).length === 0) return [{ working: null, sections: plan.sections }]
  return byWorkingSection(plan).filter(({ sections }) => sections.length > 0)
}

/** The sections in the order in which the list shows them. */
export const listedSections = (): readonly Section[] =>
  listGroups(planStore.getState().present, sessionStore.getState().groupList).flatMap(
    ({ sections }) => sections,
  )

/** The rows of the list, each working section's under a heading with what it comes to. */
export function ListGroups({ plan, row }: { plan: Plan; row: (section: Section) => ReactNode }) {
  const { common } = useWords()
  const groups = listGroups(
    plan,
    useSession((session) => session.groupList),
  )
  return groups.map(({ working, sections }) =>
    working ? (
      // biome-ignore lint/a11y/useSemanticElements: a group of options of a listbox
      <div key={working.areaIndex} role="group" aria-labelledby={`group-${working.areaIndex}`}>
        <div className="group-heading" id={`group-${working.areaIndex}`}>
          <WorkingNumeral working={working} /> {common.workingTitle(working.name)}
          <span className="aside">{common.figures.gramsRange(totalsAmong(sections, plan).productG)}</span>
        </div>
        {sections.map(row)}
      </div>
    ) : (
      sections.map(row)
    ),
  )
}

/** Says in a row that its section crosses a dividing parting. */
export function CrossingWord({ section, plan }: { section: Section; plan: Plan }) {
  const w = useWords().placement.working
  const crossing = workingSectionsOf(plan).length > 0 ? crossingOf(section, plan) : null
  return crossing && <span className="aside crosses">{w.crossesInto(crossing.into.name)}</span>
}
