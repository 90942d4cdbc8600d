import type { classProblems as english } from "../en/classProblems"

/** What is wrong with the list of a class or of its heads, a row of it by its line. */
export const classProblems: typeof english = (t) => ({
  "too-large": ({ mostMb }) =>
    `Erwartet wird eine Liste von höchstens ${t.whole(mostMb)} MB. Ist das eine andere Datei?`,
  "columns-missing": ({ columns }) =>
    `Zeile 1: ${t.and(columns)} fehlt. Erwartet wird eine Kopfzeile mit diesen Spalten.`,
  "column-twice": ({ column }) => `Zeile 1: Die Spalte „${column}“ steht zweimal da. Eine davon entfernen.`,
  "no-rows": "Die Liste hat keine Zeilen unter der Kopfzeile.",
  "cell-empty": ({ line, column }) =>
    `Zeile ${t.whole(line)}, ${column}: leer. Ausfüllen oder die Zeile entfernen.`,
  "no-file-name": ({ line, found }) =>
    `Zeile ${t.whole(line)}, name: „${found}“ kann kein Dateiname sein. Buchstaben oder Ziffern verwenden, höchstens 80.`,
  twice: ({ line, first, column, found }) =>
    `Zeile ${t.whole(line)}, ${column}: „${found}“ ergibt dieselbe Datei wie Zeile ${t.whole(first)}. Die beiden unterscheiden.`,
  "no-number": ({ line, column, found }) =>
    `Zeile ${t.whole(line)}, ${column}: erwartet werden Millimeter über 0, gefunden „${found}“.`,
  measures: ({ line }) =>
    `Zeile ${t.whole(line)}: erwartet wird entweder length, breadth, height oder around, over, front-to-nape.`,
  "no-hairline": ({ line, found, known }) =>
    `Zeile ${t.whole(line)}, hairline: erwartet wird ${t.or(known)}, gefunden „${found}“.`,
  "head-size": ({ line }) => `Zeile ${t.whole(line)}: Kein Kopf hat diese Maße.`,
  "not-in-class": ({ line, found }) =>
    `Zeile ${t.whole(line)}, name: Niemand in der Klasse heißt „${found}“. So schreiben wie in --names.`,
  "learner-without-file": ({ line, name, found }) =>
    found === ""
      ? `Zeile ${t.whole(line)}, file: ${name} hat keine. Ausfüllen oder die Zeile entfernen.`
      : `Zeile ${t.whole(line)}, file: „${found}“ von ${name} ist nicht unter den Dateien, die einmal nach der Vorlage genannt sind.`,
  "file-without-learner": ({ found }) =>
    `„${found}“ gehört niemandem in der Klasse. Eine Zeile dafür ergänzen.`,
})
