import { useStore } from "zustand"
import { copyOf } from "../../core/document/newPlan"
import type { NotKept } from "../../core/fields/notKept"
import { openInto, planStore } from "../../session/planStore"
import { saveStatus } from "../../session/saveStatus"
import { notKeptWords, useWords } from "../../session/words"
import { savePlanToFile } from "./savePlanToFile"

/** Whether the plan on the screen is on the disk; when it is not, why, and what to do. */
export function KeptStatus() {
  const w = useWords().plans.saving
  const status = useStore(saveStatus)
  if (status.state !== "not-saved") return <span className="kept">{w[status.state]}</span>
  return (
    <div className="kept not-kept">
      <p role="alert">
        <b>{w.notSaved}</b> {notKeptWords(status.why)}
      </p>
      {isElsewhere(status.why) && (
        <button type="button" className="button" onClick={keepAsCopy}>
          {w.asCopy}
        </button>
      )}
      <button type="button" className="button" onClick={() => savePlanToFile(planStore.getState().present)}>
        {w.toFile}
      </button>
    </div>
  )
}

const isElsewhere = ({ code }: NotKept) => code === "changed-elsewhere" || code === "removed-elsewhere"

const keepAsCopy = () => openInto(copyOf(planStore.getState().present))
