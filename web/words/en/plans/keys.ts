/** What each key does. The letters are of the tools, and the same in every language. */
export const keys = {
  title: "Keys",
  rows: {
    tools: {
      keys: "V  S  W  B  P  L  D  H",
      does: "select, slice, weave, backcomb, paint, leave out, divide, hairline",
    },
    free: { keys: "Alt while drawing", does: "draws freely, without snapping" },
    nudge: { keys: "← → ↑ ↓ on the map", does: "moves what is selected by 1 mm, with Shift by 5" },
    fingers: { keys: "Tap with 2 fingers, with 3", does: "undo, redo" },
    escape: { keys: "Escape", does: "cancels the stroke in hand" },
    undo: { keys: "Ctrl+Z, Ctrl+Shift+Z", does: "undo, redo" },
    copy: { keys: "Ctrl+A, Ctrl+C, Ctrl+V", does: "select all, copy, paste" },
    several: {
      keys: "Shift or Ctrl on the map",
      does: "tap to add to the selection; drag a box round several",
    },
    list: { keys: "↑ ↓ in the list", does: "choose a foil; with Shift several" },
    order: { keys: "Alt+↑ Alt+↓ in the list", does: "apply it earlier, later" },
    mirror: { keys: "M in the list", does: "mirror to the other side" },
    remove: { keys: "Delete in the list", does: "delete it" },
    number: { keys: "↑ ↓ in a number", does: "one step more, one less" },
    help: { keys: "?", does: "these keys" },
  },
}
