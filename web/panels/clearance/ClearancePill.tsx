import { useState } from "react"
import { useClearance } from "../../session/clearance/useClearance"
import { useWords } from "../../session/words"
import { Modal } from "../fields/Modal"
import { ClearanceList } from "./ClearanceList"
import "./clearance.css"

/** On every screen: whether the plan may be mixed. Opens the list of what is missing, each row going to its field. */
export function ClearancePill() {
  const told = useClearance()
  const [isOpen, setOpen] = useState(false)
  const { clearance: said } = useWords().cautions
  return (
    <>
      <button
        type="button"
        className={`button pill ${told.state}`}
        aria-haspopup="dialog"
        onClick={() => setOpen(true)}
      >
        {said.pill(told)}
      </button>
      {isOpen && (
        <Modal title={said.list} onClose={() => setOpen(false)}>
          <ClearanceList told={told} onGo={() => setOpen(false)} />
        </Modal>
      )}
    </>
  )
}
