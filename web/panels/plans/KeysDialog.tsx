import { useEffect, useRef } from "react"
import { useWords } from "../../session/words"

/** What each key does. */
export function KeysDialog({ onClose }: { onClose: () => void }) {
  const { common, plans } = useWords()
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog ref={dialog} onClose={onClose} aria-labelledby="keys-title">
      <h2 id="keys-title">{plans.keys.title}</h2>
      <dl className="keys">
        {Object.values(plans.keys.rows).map(({ keys, does }) => (
          <div key={keys}>
            <dt>{keys}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <button type="button" className="button strong" onClick={() => dialog.current?.close()}>
        {common.actions.close}
      </button>
    </dialog>
  )
}
