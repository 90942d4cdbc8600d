import type { keys as english } from "../../en/plans/keys"

/** What each key does. The letters are of the tools, and the same in every language. */
export const keys: typeof english = {
  title: "Tasten",
  rows: {
    tools: {
      keys: "V  S  W  B  P  L  D  H",
      does: "Auswählen, Slice, Weaving, Toupage, Malen, Auslassen, Abteilen, Haarlinie",
    },
    free: { keys: "Alt beim Zeichnen", does: "zeichnet frei, ohne Einrasten" },
    nudge: {
      keys: "← → ↑ ↓ auf der Karte",
      does: "verschiebt das Gewählte um 1 mm, mit Umschalt um 5",
    },
    fingers: { keys: "Tippen mit 2, mit 3 Fingern", does: "rückgängig, wiederholen" },
    escape: { keys: "Esc", does: "bricht den Strich ab" },
    undo: { keys: "Strg+Z, Strg+Umschalt+Z", does: "rückgängig, wiederholen" },
    copy: { keys: "Strg+A, Strg+C, Strg+V", does: "alles wählen, kopieren, einfügen" },
    several: {
      keys: "Umschalt oder Strg auf der Karte",
      does: "tippen ergänzt die Auswahl; einen Rahmen um mehrere ziehen",
    },
    list: { keys: "↑ ↓ in der Liste", does: "eine Folie wählen; mit Umschalt mehrere" },
    order: { keys: "Alt+↑ Alt+↓ in der Liste", does: "früher, später legen" },
    mirror: { keys: "M in der Liste", does: "auf die andere Seite spiegeln" },
    remove: { keys: "Entf in der Liste", does: "löschen" },
    number: { keys: "↑ ↓ in einer Zahl", does: "ein Schritt mehr, einer weniger" },
    help: { keys: "?", does: "diese Tasten" },
  },
}
