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
import { mmText } from "../../../core/text/figureText"
import { commit } from "../../../session/commit"
import { dividerInHand, sessionStore } from "../../../session/sessionStore"
import { useSession } from "../../../session/usePlan"

/** The dividing partings one by one: chosen, nudged, mirrored and removed without a pointer. */
export function DividerList({ plan }: { plan: Plan }) {
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
              Dividing parting {index + 1}, {mmText(lengthOf(index, plan))}
            </button>
            {id === inHand && <Moves id={id} plan={plan} />}
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="button"
        onClick={() => commit("Remove all dividing partings", removeAllWorkingPartings)}
      >
        Remove all
      </button>
    </>
  )
}

const lengthOf = (index: number, plan: Plan) =>
  lengthMm(headOf(plan).surface, divisionOf(plan).dividers[index].path)

const nudgeMm = 2
const steps: readonly (readonly [label: string, step: WorkingStep])[] = [
  ["Toward the face", { rightMm: 0, forwardMm: nudgeMm }],
  ["Toward the nape", { rightMm: 0, forwardMm: -nudgeMm }],
  ["To client’s right", { rightMm: nudgeMm, forwardMm: 0 }],
  ["To client’s left", { rightMm: -nudgeMm, forwardMm: 0 }],
]

function Moves({ id, plan }: { id: string; plan: Plan }) {
  return (
    <div className="actions">
      {steps.map(([label, step]) => (
        <button
          type="button"
          className="button"
          key={label}
          onClick={() =>
            commit(
              `Move the dividing parting ${label[0].toLowerCase()}${label.slice(1)}`,
              nudgeWorkingParting(id, step),
              `divider:${id}`,
            )
          }
        >
          {label}
        </button>
      ))}
      <button
        type="button"
        className="button"
        onClick={() => commit("Mirror the dividing parting", mirrorWorkingParting(id))}
      >
        Mirror
      </button>
      <button
        type="button"
        className="button"
        onClick={() => commit(removeLabel(id, plan), removeWorkingParting(id))}
      >
        Remove
      </button>
    </div>
  )
}

function removeLabel(id: string, plan: Plan) {
  const more = endingOn(id, plan).length
  return `Remove the dividing parting${more > 0 ? ` and ${more} that ended on it` : ""}`
}
