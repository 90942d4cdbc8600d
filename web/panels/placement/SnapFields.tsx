import { limits } from "../../core/document/limits"
import { sessionStore } from "../../session/sessionStore"
import { useSession } from "../../session/usePlan"
import { NumberField } from "../fields/NumberField"

/** Whether strokes snap, and how much hair is left between a parting and the last. */
export function SnapFields() {
  const snaps = useSession((session) => session.snaps)
  const gapMm = useSession((session) => session.gapMm)
  return (
    <fieldset className="switches">
      <legend>Snap</legend>
      <div className="choices">
        <label>
          <input
            type="checkbox"
            checked={snaps}
            onChange={(event) => sessionStore.setState({ snaps: event.target.checked })}
          />
          <span>Snap</span>
        </label>
      </div>
      {snaps && (
        <NumberField
          name="Gap to last"
          unit="mm"
          value={gapMm}
          range={limits.betweenMm}
          onCommit={(mm) => sessionStore.setState({ gapMm: mm })}
        />
      )}
    </fieldset>
  )
}
