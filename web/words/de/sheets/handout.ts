import type { handout as english } from "../../en/sheets/handout"

/** The technique handout. */
export const handout: typeof english = () => ({
  about: "Technikblatt",
  practise:
    "Zuerst am Übungskopf üben. An Menschen nur unter Aufsicht einer zugelassenen Fachkraft; Herstellerangaben und örtliche Regeln gehen vor.",
  aim: "Ziel",
  tools: "Werkzeug",
  draw: "Selbst zeichnen",
  told: "So geht es",
  steps: "Schritt für Schritt",
  timing: "Zeiten",
  faults: "Häufige Fehler (übliche Praxis)",
  fault: "Fehler",
  cause: "Ursache",
  cure: "Abhilfe",
  checks: "Die eigene Arbeit prüfen",
  assessor: "Prüfung",
  student: "Azubi",
  date: "Datum",
  unaided: "ohne Hilfe gemacht",
  withHelp: "mit Hilfe",
  notYet: "noch nicht",
  remarks: "Notizen",
  assessorName: "Geprüft von",
  signature: "Unterschrift",
})
