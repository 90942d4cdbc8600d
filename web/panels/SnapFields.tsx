import { limits } from "../plan/limits"
import { sessionStore } from "../plan/sessionStore"
import { useSession } from "../plan/usePlan"
import { NumberField } from "./NumberField"

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
