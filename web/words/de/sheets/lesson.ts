import type { lesson as english } from "../../en/sheets/lesson"

/** The text of a handout, where an educator changes it. */
export const lesson: typeof english = (t) => ({
  edit: "Text ändern …",
  asDrawn: "Zurück zu dem, was der Plan sagt",
  title: "Was die Klasse liest",
  name: "Titel",
  aim: "Ziel",
  tools: "Werkzeuge, eines je Zeile",
  steps: "So geht es, ein Schritt je Zeile",
  checks: "Eigene Arbeit prüfen, ein Punkt je Zeile",
  faults: "Häufige Fehler",
  addFault: "Fehler hinzufügen",
  remove: "Entfernen",
  removeFault: (number) => `Fehler ${t.whole(number)} entfernen`,
  follows:
    "Was Sie stehen lassen, folgt weiter dem Plan. Die Klasse liest es: schreiben Sie nichts über einen Gast hinein.",
  keep: "Diesen Text sichern",
})
