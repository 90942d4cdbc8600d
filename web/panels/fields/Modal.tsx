import "./modal.css"
import { type ReactNode, useId, useLayoutEffect, useRef } from "react"

import { useWords } from "../../session/words"

type Props = {
  title: string
  onClose: () => void
  wide?: boolean
  /** Something is being written: a touch beside the dialog does not throw it away. */
  writing?: boolean
  children: ReactNode
}

/** A dialog over the page; Escape and the page behind it close it. */
export function Modal({ title, onClose, wide = false, writing = false, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null)
  const id = useId()
  // Closed while it still stands on the page, so that the focus goes back to where it came from.
  useLayoutEffect(() => {
    const shown = dialog.current
    shown?.showModal()
    return () => shown?.close()
  }, [])
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape does the same and is the dialog's own
    <dialog
      ref={dialog}
      className={wide ? "plans wide" : "plans"}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
      onClick={(event) => !writing && event.target === dialog.current && onClose()}
    >
      <div className="plans-body">
        <div className="plans-head">
          <h2 id={id}>{title}</h2>
          <button type="button" className="button quiet" onClick={onClose}>
            {useWords().common.actions.close}
          </button>
        </div>
        {children}
      </div>
    </dialog>
  )
}
