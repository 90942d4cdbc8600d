import type { Plan } from "../../../core/document/schema"
import {
  applyByWorkingSection,
  numberByWorkingSection,
} from "../../../core/edits/working/numberWorkingSections"
import { moveWorkingSection, renameWorkingSection } from "../../../core/edits/working/orderWorkingSections"
import { letters } from "../../../core/fields/limits"
import { type WorkingTotals, workingTotals } from "../../../core/figures/working/workingTotals"
import type { WorkingSection } from "../../../core/figures/workingSections"
import { byWorkingSection } from "../../../core/figures/workingSectionsBelonging"
import { commit } from "../../../session/commit"
import { sessionStore } from "../../../session/sessionStore"
import { useSession } from "../../../session/usePlan"
import { useWords } from "../../../session/words"
import type { PlacementWords } from "../../../words/en/placement/placement"
import type { Tools } from "../../../words/tools"
import { TextField } from "../../fields/TextField"
import { WorkingNumeral } from "./WorkingNumeral"

/** Each working section with what it comes to and its place in the order; and what follows from that order. */
export function WorkingList({ plan }: { plan: Plan }) {
  const w = useWords().placement.working
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
          onClick={() => commit({ chapter: "placement", code: "number-by-section" }, numberByWorkingSection)}
        >
          {w.numberBySection}
        </button>
        <button
          type="button"
          className="button"
          onClick={() => commit({ chapter: "placement", code: "apply-by-section" }, applyByWorkingSection)}
        >
          {w.applyBySection}
        </button>
        <label className="check">
          <input
            type="checkbox"
            checked={groupList}
            onChange={(event) => sessionStore.setState({ groupList: event.target.checked })}
          />
          <span>{w.groupList}</span>
        </label>
      </div>
    </>
  )
}

type RowProps = { total: WorkingTotals; index: number; last: number; plan: Plan }

function Row({ total, index, last, plan }: RowProps) {
  const { common, placement } = useWords()
  const w = placement.working
  const { working } = total
  return (
    <>
      <WorkingNumeral working={working} />
      <TextField
        name={w.nameOf(working.numeral)}
        value={common.workingTitle(working.name)}
        most={letters.name}
        onCommit={(name) => rename(index, working, name)}
      />
      <Move working={working} index={index} by={-1} disabled={index === 0} />
      <Move working={working} index={index} by={1} disabled={index === last} />
      <p className="aside">
        {partsOf(total, placement.working, common.figures).map((words) => (
          <span className="nowrap" key={words}>
            {words}
          </span>
        ))}
      </p>
      <button
        type="button"
        className="button"
        aria-label={w.selectFoils(working.name)}
        onClick={() => selectAll(working, plan)}
      >
        {w.select}
      </button>
    </>
  )
}

/** What a working section comes to: scalp, foils, product, and the minutes to place them. */
function partsOf({ areaCm2, foils, placeMin }: WorkingTotals, w: PlacementWords["working"], t: Tools) {
  if (foils.foils === 0 && foils.productG.high === 0) return [t.area(areaCm2), w.noFoils]
  const minutes = placeMin ? [w.minutes(placeMin.low, placeMin.high)] : []
  const count = foils.foils > 0 ? [w.foils(foils.foils)] : []
  return [t.area(areaCm2), ...count, t.gramsRange(foils.productG), ...minutes]
}

function rename(index: number, { name }: WorkingSection, typed: string) {
  const done = { chapter: "placement", code: "rename-section", name, to: typed.trim() } as const
  commit(done, renameWorkingSection(index, typed))
}

type MoveProps = { working: WorkingSection; index: number; by: -1 | 1; disabled: boolean }

function Move({ working, index, by, disabled }: MoveProps) {
  const w = useWords().placement.working
  const { name } = working
  return (
    <button
      type="button"
      className="button"
      disabled={disabled}
      onClick={() =>
        commit(
          { chapter: "placement", code: by < 0 ? "work-earlier" : "work-later", name },
          moveWorkingSection(index, by),
        )
      }
    >
      <span aria-hidden="true">{by < 0 ? "↑" : "↓"}</span>
      <span className="unseen">{w.work({ name, by })}</span>
    </button>
  )
}

function selectAll(working: WorkingSection, plan: Plan) {
  const group = byWorkingSection(plan).find((each) => each.working === working)
  sessionStore.setState({ selectedIds: group?.sections.map(({ id }) => id) ?? [] })
}
