import { useEffect, useRef } from "react"

const keys: readonly (readonly [keys: string, does: string])[] = [
  ["V  S  W  B  L  D  H", "select, slice, weave, backcomb, left out, divide, hairline"],
  ["Alt while drawing", "draws freely, without snapping"],
  ["← → ↑ ↓ on the map", "moves what is selected by 1 mm, with Shift by 5"],
  ["Tap with 2 fingers, with 3", "undo, redo"],
  ["Escape", "calls the stroke in hand off"],
  ["Ctrl+Z, Ctrl+Shift+Z", "undo, redo"],
  ["Ctrl+A, Ctrl+C, Ctrl+V", "select all, copy, paste"],
  ["Shift or Ctrl on the map", "touch to add to the selection; drag a box round several"],
  ["↑ ↓ in the list", "choose a foil; with Shift several"],
  ["Alt+↑ Alt+↓ in the list", "apply it earlier, later"],
  ["M in the list", "mirror to the other side"],
  ["Delete in the list", "take it off"],
  ["↑ ↓ in a number", "one step more, one less"],
  ["?", "this sheet"],
]

/** What each key does. */
export function KeysDialog({ onClose }: { onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog ref={dialog} onClose={onClose} aria-labelledby="keys-title">
      <h2 id="keys-title">Keys</h2>
      <dl className="keys">
        {keys.map(([key, does]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <button type="button" className="button strong" onClick={() => dialog.current?.close()}>
        Close
      </button>
    </dialog>
  )
}
