import { useStore } from "zustand"
import { copyOf } from "../../core/document/newPlan"
import { saveStatus } from "../../session/autosave"
import { openInto, planStore } from "../../session/planStore"
import { notKeptWords } from "../../session/words"
import { savePlanToFile } from "./savePlanToFile"

/** Whether the plan on the screen is on the disk; when it is not, why, and what to do. */
export function KeptStatus() {
  const status = useStore(saveStatus)
  if (status.state !== "not-saved")
    return <span className="kept">{status.state === "saved" ? "Saved" : "Saving…"}</span>
  const isElsewhere = status.why.code === "changed-elsewhere" || status.why.code === "removed-elsewhere"
  return (
    <div className="kept not-kept">
      <p role="alert">
        <b>Not saved.</b> {notKeptWords(status.why)}
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
