import { useStore } from "zustand"
import { copyOf } from "../../core/document/newPlan"
import { saveStatus } from "../../session/autosave"
import { openInto, planStore } from "../../session/planStore"
import { changedElsewhere, removedElsewhere } from "../../storage/shelfWords"
import { savePlanToFile } from "./savePlanToFile"

/** Whether the plan on the screen is on the disk; when it is not, why, and what to do. */
export function KeptStatus() {
  const status = useStore(saveStatus)
  if (status.state !== "not-saved")
    return <span className="kept">{status.state === "saved" ? "Saved" : "Saving…"}</span>
  const isElsewhere = status.why === changedElsewhere || status.why === removedElsewhere
  return (
    <div className="kept not-kept">
      <p role="alert">
        <b>Not saved.</b> {status.why}
      </p>
      {isElsewhere && (
        <button type="button" className="button" onClick={keepAsCopy}>
          Keep as a copy
        </button>
      )}
      <button type="button" className="button" onClick={() => savePlanToFile(planStore.getState().present)}>
        Save to a file
      </button>
    </div>
  )
}

const keepAsCopy = () => openInto(copyOf(planStore.getState().present))
