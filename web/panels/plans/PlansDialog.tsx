import "./plans.css"
import { copyOf } from "../../core/document/newPlan"
import type { Plan } from "../../core/document/schema"
import { examplePlan } from "../../core/file/examplePlan"
import { openInto } from "../../session/planStore"
import { usePlan } from "../../session/usePlan"
import { FileProblems } from "../fields/FileProblems"
import { Modal } from "../fields/Modal"
import { OpenFileButton } from "../fields/OpenFileButton"
import { ShelfList } from "./ShelfList"
import { savePlanToFile } from "./savePlanToFile"
import { desk, freshPlan } from "./shelfActions"
import { useShelf } from "./useShelf"

/** The plans of this browser: open, begin, keep, take away. */
export function PlansDialog({ onClose }: { onClose: () => void }) {
  const plan = usePlan((open) => open)
  const shelf = useShelf(desk)
  const show = (next: Plan) => {
    openInto(next)
    onClose()
  }
  return (
    <Modal title="Plans" onClose={onClose}>
      <div className="actions">
        <button type="button" className="button strong" onClick={async () => show(await freshPlan(desk))}>
          New plan
        </button>
        <button type="button" className="button" onClick={() => show(copyOf(examplePlan()))}>
          Start from the example
        </button>
        <OpenFileButton onOpen={async (file) => (await shelf.openFile(file)) && onClose()} />
        <button type="button" className="button" onClick={() => savePlanToFile(plan)}>
          Save to a file
        </button>
      </div>
      {shelf.problems.length > 0 && <FileProblems problems={shelf.problems} />}
      {shelf.fault && (
        <p className="fault" role="alert">
          {shelf.fault}
        </p>
      )}
      <ShelfList shelf={shelf} openId={plan.id} onOpened={onClose} />
      <p className="aside">
        Plans stay in this browser and leave it only as files. Save one to a file to carry it, or to have it
        twice.
      </p>
    </Modal>
  )
}
