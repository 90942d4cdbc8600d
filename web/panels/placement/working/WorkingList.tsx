import { letters } from "../../../core/document/limits"
import type { Plan } from "../../../core/document/schema"
import {
  applyByWorkingSection,
  numberByWorkingSection,
} from "../../../core/edits/working/numberWorkingSections"
import { moveWorkingSection, renameWorkingSection } from "../../../core/edits/working/orderWorkingSections"
import { type WorkingTotals, workingTotals } from "../../../core/figures/working/workingTotals"
import { workingWords } from "../../../core/figures/working/workingWords"
import type { WorkingSection } from "../../../core/figures/workingSections"
import { byWorkingSection } from "../../../core/figures/workingSectionsBelonging"
import { commit } from "../../../session/commit"
import { sessionStore } from "../../../session/sessionStore"
import { useSession } from "../../../session/usePlan"
import { TextField } from "../../fields/TextField"
import { WorkingNumeral } from "./WorkingNumeral"

/** Each working section with what it comes to and its place in the order; and what follows from that order. */
export function WorkingList({ plan }: { plan: Plan }) {
  const groupList = useSession((session) => session.groupList)
  const totals = workingTotals(plan)
  return (
    <>
      <ol className="working-list">
        {totals.map((total, index) => (
          <li key={total.working.areaIndex}>
            <Row total={total} index={index} last={totals.length - 1} plan={plan} />
          </li>
        ))}
      </ol>
      <div className="actions">
        <button
          type="button"
          className="button"
          onClick={() => commit("Number by working section and side", numberByWorkingSection)}
        >
          Number by section and side
        </button>
        <button
          type="button"
          className="button"
          onClick={() => commit("Apply by working section and side", applyByWorkingSection)}
        >
          Apply by section and side
        </button>
        <label className="check">
          <input
            type="checkbox"
            checked={groupList}
            onChange={(event) => sessionStore.setState({ groupList: event.target.checked })}
          />
          <span>Group the list of foils</span>
        </label>
      </div>
    </>
  )
}

type RowProps = { total: WorkingTotals; index: number; last: number; plan: Plan }

function Row({ total, index, last, plan }: RowProps) {
  const { working } = total
  return (
    <>
      <WorkingNumeral working={working} />
      <TextField
        name={`Name of working section ${working.numeral}`}
        value={working.name}
        most={letters.name}
        onCommit={(name) => rename(index, working, name)}
      />
      <Move working={working} index={index} by={-1} disabled={index === 0} />
      <Move working={working} index={index} by={1} disabled={index === last} />
      <p className="aside">
        {workingWords(total).map((words) => (
          <span className="nowrap" key={words}>
            {words}
          </span>
        ))}
      </p>
      <button type="button" className="button" onClick={() => selectAll(working, plan)}>
        Select<span className="unseen"> the foils of {working.name}</span>
      </button>
    </>
  )
}

function rename(index: number, { name: before }: WorkingSection, name: string) {
  commit(`Rename ${before}${name.trim() ? ` to ${name.trim()}` : ""}`, renameWorkingSection(index, name))
}

type MoveProps = { working: WorkingSection; index: number; by: -1 | 1; disabled: boolean }

function Move({ working, index, by, disabled }: MoveProps) {
  const words = by < 0 ? "earlier" : "later"
  return (
    <button
      type="button"
      className="button"
      disabled={disabled}
      onClick={() => commit(`Work ${working.name} ${words}`, moveWorkingSection(index, by))}
    >
      <span aria-hidden="true">{by < 0 ? "↑" : "↓"}</span>
      <span className="unseen">
        Work {working.name} {words}
      </span>
    </button>
  )
}

function selectAll(working: WorkingSection, plan: Plan) {
  const group = byWorkingSection(plan).find((each) => each.working === working)
  sessionStore.setState({ selectedIds: group?.sections.map(({ id }) => id) ?? [] })
}
