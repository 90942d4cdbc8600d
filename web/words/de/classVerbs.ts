import type { classVerbs as english } from "../en/classVerbs"

/** The verbs of a class, and how the size of a head is given. */
export const headOptions = {
  length: "mm, Braue bis Hinterkopf, mit dem Messzirkel",
  breadth: "mm, an der breitesten Stelle, mit dem Messzirkel",
  height: "mm, Ohr bis oben, mit dem Messzirkel",
  around: "mm, um den Kopf, mit dem Maßband",
  over: "mm, Ohr zu Ohr über den Oberkopf, mit dem Maßband",
  "front-to-nape": "mm, vordere Haarlinie bis Nacken über den Oberkopf, mit dem Maßband",
  hairline: "round, straight, receding oder peaked; ohne Angabe round",
}

export const classVerbs: typeof english = {
  lay: {
    summary: "Eine Technik nach ihren Maßen auf einen Kopf gelegt, als Plan.",
    details: [
      "TECHNIQUE ist eine Technikdatei oder die Kennung einer mitgelieferten Technik. Ohne Maße liegt sie auf dem üblichen Kopf.",
    ],
    options: {
      ...headOptions,
      out: "wohin der Plan geschrieben wird",
    },
  },
  handout: {
    summary:
      "Das Arbeitsblatt einer Technik für jede Person einer Klasse als PDF, auf dem eigenen Kopf, wo er gemessen ist.",
    details: [
      "TECHNIQUE ist eine Technikdatei oder die Kennung einer mitgelieferten Technik. Geschrieben wird erst, wenn alle fertig sind.",
      "--language ist die Sprache der Blätter; Sätze über den Befehl stehen in der von --messages.",
    ],
    options: {
      names: "die Klasse, CSV mit der Spalte name",
      heads:
        "ihre Köpfe, CSV: name und in mm length, breadth, height oder around, over, front-to-nape; hairline, wenn nicht round",
      paper: "a4 oder letter; ohne Angabe letter für en-US, sonst a4",
      out: "der Ordner, in den geschrieben wird; fehlt er, wird er angelegt",
      messages: "Sprache der Sätze über den Befehl; ohne Angabe en-GB",
    },
  },
  compare: {
    summary:
      "Pläne von Lernenden mit einer Vorlage verglichen, Partie für Partie, nach Kriterien, jedes mit einer Toleranz.",
    details: [
      "MODEL ist ein Plan, eine Technikdatei oder die Kennung einer mitgelieferten Technik. Sie wird auf den Kopf der lernenden",
      "Person gelegt: eine Technik nach ihren Maßen, ein anderer Plan Punkt für Punkt nach der Haarlinie. Zugeordnet wird nach Art,",
      "Seite und Lage, gleich in welcher Reihenfolge. Was fehlt, erfüllt kein Kriterium. Die Toleranzen sind Annahmen.",
    ],
    options: {
      names: "die Klasse, CSV mit den Spalten name und file",
      out: "wohin die Tabelle der Klasse geschrieben wird, CSV",
      sheets: "Ordner für je ein Bewertungsblatt als PDF; fehlt er, wird er angelegt",
      within:
        "Toleranzen, durch Komma getrennt: hairline=2,back=2,along=5 (mm), angle=10 (Grad), length=10 (%), depth=1,start=2 (mm)",
      paper: "Papier der Blätter, a4 oder letter; ohne Angabe letter für en-US, sonst a4",
      messages: "Sprache der Sätze über den Befehl; ohne Angabe en-GB",
    },
  },
}
