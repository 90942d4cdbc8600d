import { limits } from "../../core/fields/limits"
import { sessionStore } from "../../session/sessionStore"
import { useSession } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { NumberField } from "../fields/NumberField"

/** Whether strokes snap, and how much hair is left between a parting and the last. */
export function SnapFields() {
  const { common, placement } = useWords()
  const w = placement.toolRail
  const snaps = useSession((session) => session.snaps)
  const gapMm = useSession((session) => session.gapMm)
  return (
    <fieldset className="switches">
      <legend>{w.snap}</legend>
      <div className="choices">
        <label>
          <input
            type="checkbox"
            checked={snaps}
            onChange={(event) => sessionStore.setState({ snaps: event.target.checked })}
          />
          <span>{w.snap}</span>
        </label>
      </div>
      {snaps && (
        <NumberField
          name={w.gapToLast}
          unit={common.units.mm}
          value={gapMm}
          range={limits.betweenMm}
          onCommit={(mm) => sessionStore.setState({ gapMm: mm })}
        />
      )}
    </fieldset>
  )
}
