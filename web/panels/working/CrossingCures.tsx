import type { Section } from "../../../geometry/section/section"
import { act } from "../../plan/act"
import { letCross, splitAtWorkingPartings, trimToWorkingSection } from "../../plan/edits/trimToWorkingSection"
import { sectionName } from "../../plan/sectionName"

/** What can be done about sections that cross a dividing parting: cut them there, cut them in two, or let them be. */
export function CrossingCures({ sections }: { sections: readonly Section[] }) {
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
        <button type="button" className="button" key={verb} onClick={() => act(label, edit(ids))}>
          <span>
            {verb}
            <span className={isOne ? "unseen" : ""}> {what}</span> {rest}
          </span>
        </button>
      ))}
    </div>
  )
}
