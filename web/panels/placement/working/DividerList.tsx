import { lengthMm } from "../../../../geometry/surface/surfacePath"
import type { Plan } from "../../../core/document/schema"
import { mirrorWorkingParting } from "../../../core/edits/working/addWorkingPartings"
import { nudgeWorkingParting, type WorkingStep } from "../../../core/edits/working/moveWorkingParting"
import {
  endingOn,
  removeAllWorkingPartings,
  removeWorkingParting,
} from "../../../core/edits/working/removeWorkingPartings"
import { headOf } from "../../../core/figures/measured"
import { dividingOf, divisionOf } from "../../../core/figures/workingSections"
import { commit } from "../../../session/commit"
import { dividerInHand, sessionStore } from "../../../session/sessionStore"
import { useSession } from "../../../session/usePlan"
import { useWords } from "../../../session/words"

/** The section lines one by one: chosen, nudged, mirrored and removed without a pointer. */
export function DividerList({ plan }: { plan: Plan }) {
  const w = useWords().placement.working
  const inHand = useSession(dividerInHand)
  const { dividers } = dividingOf(plan)
  return (
    <>
      <ul className="divider-list">
        {dividers.map(({ id }, index) => (
          <li key={id}>
            <button
              type="button"
              className="button"
              aria-pressed={id === inHand}
              onClick={() => sessionStore.setState({ dividerId: id, selectedIds: [] })}
            >
              {w.line({ number: index + 1, lengthMm: lengthOf(index, plan) })}
            </button>
            {id === inHand && <Moves id={id} plan={plan} />}
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="button"
        onClick={() =>
          commit({ chapter: "placement", code: "remove-section-lines" }, removeAllWorkingPartings)
        }
      >
        {w.removeAll}
      </button>
    </>
  )
}

const lengthOf = (index: number, plan: Plan) =>
  lengthMm(headOf(plan).surface, divisionOf(plan).dividers[index].path)

const nudgeMm = 2
const steps = {
  face: { rightMm: 0, forwardMm: nudgeMm },
  nape: { rightMm: 0, forwardMm: -nudgeMm },
  right: { rightMm: nudgeMm, forwardMm: 0 },
  left: { rightMm: -nudgeMm, forwardMm: 0 },
} satisfies Record<string, WorkingStep>
const ways = Object.keys(steps) as (keyof typeof steps)[]

function Moves({ id, plan }: { id: string; plan: Plan }) {
  const w = useWords().placement.working
  return (
    <div className="actions">
      {ways.map((way) => (
        <button
          type="button"
          className="button"
          key={way}
          onClick={() =>
            commit(
              { chapter: "placement", code: "nudge-section-line", way },
              nudgeWorkingParting(id, steps[way]),
              `divider:${id}`,
            )
          }
        >
          {w.nudges[way]}
        </button>
      ))}
      <button
        type="button"
        className="button"
        onClick={() =>
          commit({ chapter: "placement", code: "mirror-section-line" }, mirrorWorkingParting(id))
        }
      >
        {w.mirror}
      </button>
      <button
        type="button"
        className="button"
        onClick={() =>
          commit(
            { chapter: "placement", code: "remove-section-line", more: endingOn(id, plan).length },
            removeWorkingParting(id),
          )
        }
      >
        {w.remove}
      </button>
    </div>
  )
}
