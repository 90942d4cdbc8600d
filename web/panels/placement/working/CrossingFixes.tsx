import type { Section } from "../../../../geometry/section/section"
import {
  letCross,
  splitAtWorkingPartings,
  trimToWorkingSection,
} from "../../../core/edits/working/trimToWorkingSection"
import { sectionName } from "../../../core/text/sectionName"
import { commit } from "../../../session/commit"

/** What can be done about sections that cross a dividing parting: cut them there, cut them in two, or let them be. */
export function CrossingFixes({ sections }: { sections: readonly Section[] }) {
  const ids = sections.map(({ id }) => id)
  const isOne = sections.length === 1
  const what = isOne ? sectionName(sections[0]) : `all ${sections.length}`
  const cures = [
    ["Trim", "here", `Trim ${what} to the working section`, trimToWorkingSection],
    ["Split", "in two", `Split ${what} at the dividing parting`, splitAtWorkingPartings],
    ["Let", "be", `Let ${what} cross the dividing parting`, letCross],
  ] as const
  return (
    <div className="actions">
      {cures.map(([verb, rest, label, edit]) => (
        <button type="button" className="button" key={verb} onClick={() => commit(label, edit(ids))}>
          <span>
            {verb}
            <span className={isOne ? "unseen" : ""}> {what}</span> {rest}
          </span>
        </button>
      ))}
    </div>
  )
}
