import { type ReactNode, useEffect, useRef } from "react"
import { examplePlan } from "../plan/examplePlan"
import { copyOf } from "../plan/newPlan"
import { openInto } from "../plan/planStore"
import type { Plan } from "../plan/schema"
import { usePlan } from "../plan/usePlan"
import { FileProblems } from "./FileProblems"
import { OpenFileButton } from "./OpenFileButton"
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

type ModalProps = { title: string; onClose: () => void; children: ReactNode }

/** A dialog over the page; Escape and the page behind it close it. */
function Modal({ title, onClose, children }: ModalProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const shown = dialog.current
    shown?.showModal()
    return () => shown?.close()
  }, [])
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape does the same and is the dialog's own
    <dialog
      ref={dialog}
      className="plans"
      aria-labelledby="dialog-title"
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
      onClick={(event) => event.target === dialog.current && onClose()}
    >
      <div className="plans-body">
        <div className="plans-head">
          <h2 id="dialog-title">{title}</h2>
          <button type="button" className="button quiet" onClick={onClose}>
            Close
          </button>
        </div>
        {children}
      </div>
    </dialog>
  )
}
