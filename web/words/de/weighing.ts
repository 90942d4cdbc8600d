import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import type { ReadingProblem } from "../../core/weighing/weighedBowl"
import { neededColumns } from "../../core/weighing/weighingCsv"
import type { CommonWords } from "../en/common/common"
import type { weighing as english, WeighingWords } from "../en/weighing"
import type { Tools } from "../tools"

export const weighing: typeof english = (t, { foils: foilsWords, kinds, mix: mixName }) => ({
  done: {
    "keep-weighing": "Wägung sichern",
    "add-list": "Wägungen aus einer Liste hinzufügen",
    "leave-out": "Wägung weglassen",
    "count-again": "Wägung wieder zählen",
    "remove-weighing": "Wägung entfernen",
    "back-to-start": "Zurück zu den Startwerten",
    "count-all": "Alle Wägungen wieder zählen",
    "take-start": "Mit Werten anderer Salons beginnen",
    "leave-start": "Zurück zu den Branchenwerten",
  },

  title: "Schalen wiegen",
  bowl: {
    how: "Die Schale mit Pinsel vor der ersten und nach der letzten Folie wiegen.",
    noFoils: "Noch keine Folien. Danach jede Schale mit Pinsel vorher und nachher wiegen.",
    what: "Gewogen",
    chooseOne: "Bitte wählen",
    before: "Vorher",
    after: "Nachher",
    save: ({ productG }) => `Sichern: ${t.number(productG)} g verbraucht`,
    name: {
      bowl: ({ mix, bowl, foils }) =>
        `${t.capital(mixName(mix))}, Schale ${t.whole(bowl)}: ${foilsWords(foils)}`,
      foil: ({ foil }) => `Nur Folie ${t.whole(foil)}`,
      coat: ({ foil, part, mix }) =>
        `${t.capital(mixName(mix))} ${part === "roots" ? "am Ansatz" : "auf Längen und Spitzen"} von Folie ${t.whole(foil)}`,
    },
    ofPlan: ({ date, plan, what }) => (plan ? `${date}, ${plan}: ${what}` : `${date}: ${what}`),
    problem: readingProblems(t),
  },
  learnt: learntWords(t, kinds),
  picture: {
    name: "Erwartete und gewogene Gramm; die Liste darunter sagt dasselbe in Zahlen",
    axis: "g gewogen",
    legend:
      "Nach oben: erwartete Gramm, der Balken in vier von fünf Fällen. Nach rechts: gewogene Gramm. Auf der schrägen Linie stimmen beide überein. Punkte zählen, Kreuze wirken falsch, Ringe sind weggelassen.",
  },
  rows: {
    count: (count) => t.count(count, { one: "# Wägung", other: "# Wägungen" }),
    doubted: "Wägungen, die falsch wirken",
    looksWrong: ({ name, weighedG, expectedG }) =>
      `${name}: ${t.number(weighedG)} g gewogen; nach den anderen wären es etwa ${t.grams(expectedG)}. Prüfen oder weglassen.`,
    figures: ({ weighedG, expectedG }) => `${t.number(weighedG)} g gewogen, ${t.grams(expectedG)} erwartet`,
    counts: "Zählt",
    remove: "Entfernen",
    removeThis: ({ name }) => `${name} entfernen`,
  },
  start: {
    take: "Mit Werten anderer Salons beginnen, JSON",
    leave: "Mit Branchenwerten beginnen",
    from: ({ salons }) =>
      t.count(salons, {
        one: "Beginnt mit den Werten von # Salon. Ihre eigenen Schalen grenzen sie ein.",
        other: "Beginnt mit den zusammengeführten Werten von # Salons. Ihre eigenen Schalen grenzen sie ein.",
      }),
  },
  list: {
    add: "Liste hinzufügen, CSV",
    save: "Liste sichern, CSV",
    backToStart: "Zurück zu den Startwerten",
    countAll: "Alle Wägungen wieder zählen",
    line: ({ file, line }) => `${file}, Zeile ${t.whole(line)}`,
    problem: listProblems(t),
    doubtful: ({ line, weighedG, expectedG }) =>
      `Zeile ${t.whole(line)} wirkt falsch: ${t.number(weighedG, 1)} g gewogen; nach den anderen wären es etwa ${t.number(expectedG, 1)} g. Prüfen oder weglassen.`,
  },
})

const readingProblems = (t: Tools): WeighingWords["bowl"]["problem"] => {
  const said = ({ beforeG, afterG }: ReadingProblem) =>
    `${t.number(beforeG, 1)} g vorher und ${t.number(afterG, 1)} g nachher`
  return {
    "not-read": (read) =>
      `${said(read)}: beide Werte in Gramm eingeben, mit derselben Schale und demselben Pinsel.`,
    gained: (read) => `${said(read)}: Die Schale wiegt nachher mehr als vorher. Sind die Werte vertauscht?`,
    "nothing-placed": (read) => `${said(read)}: Nichts wurde verbraucht. Diese Schale weglassen.`,
  }
}

const learntWords = (t: Tools, kinds: CommonWords["kinds"]): WeighingWords["learnt"] => {
  const { share, probability } = calibrationFigures.trust
  const target = `höchstens ${t.percent(share)} Abweichung in ${t.number(10 * probability)} von 10 Fällen`
  const stands = ({ withinShare }: { withinShare: number }) =>
    `Der mittlere Wert weicht in 9 von 10 Fällen höchstens ${t.percent(withinShare)} von der Wahrheit ab.`
  return {
    trust: {
      "no-agreement":
        "Diese Wägungen stimmen nicht gut genug überein, um zu sagen, wie weit der mittlere Wert danebenliegen kann.",
      trusted: (trust) => `${stands(trust)} Darauf ist Verlass.`,
      "more-needed": (trust) =>
        `${stands(trust)} ${t.count(trust.more, {
          one: `Für ${target} fehlt noch eine solche Wägung.`,
          other: `Für ${target} fehlen noch # solche Wägungen.`,
        })}`,
      "too-many-needed": (trust) => `${stands(trust)} Für ${target} reicht keine Zahl solcher Wägungen.`,
    },
    byStart: "Bis dahin nutzt dieser Plan die Startwerte; sie sind Annahmen.",
    byWeighings: (learnt) =>
      `Dieser Plan nutzt, was gelernt wurde aus: ${t.and(
        learnt.map(
          ({ product, kind, weighings }) =>
            `${[product, kind && kinds[kind]].filter(Boolean).join(", ") || "alle Wägungen"} (${t.whole(weighings)} gewogen)`,
        ),
      )}.`,
    figure: "Wert",
    start: "Zu Beginn",
    weighed: "Gewogen",
    names: {
      lossG: "Verlust pro Folie",
      soakGPerG: "Zieht ein, pro Gramm Haar",
      coatMgPerCm2: "Liegt auf, pro cm² Haar",
    },
    grams: ({ low, mid, high }) => `${t.number(mid)} g (${t.number(low)} bis ${t.number(high)})`,
    milligrams: ({ low, mid, high }) => `${t.number(mid)} mg (${t.number(low)} bis ${t.number(high)})`,
  }
}

const listProblems = (t: Tools): WeighingWords["list"]["problem"] => {
  const columns = `erwartet sind die Spalten ${neededColumns.join(",")} (und foils, wo eine Zeile eine Schale für mehrere ist)`
  const at = ({ line, column }: { line: number; column: string }) => `Zeile ${t.whole(line)}, ${column}`
  const found = (cell: { found: string }) => (cell.found === "" ? "sie ist leer" : `gefunden „${cell.found}“`)
  return {
    "file-too-large": ({ mostMb }) =>
      `Eine Liste von Wägungen hat höchstens ${t.whole(mostMb)} MB. Ist das eine andere Datei?`,
    "header-empty": `Zeile 1 ist leer: ${columns}.`,
    "header-separator": ({ separator }) =>
      separator === "tabs"
        ? "Zeile 1: Die Spalten sind durch Tabulatoren getrennt. Die Liste mit Kommas zwischen den Spalten und Punkten in Zahlen sichern, 4.5."
        : "Zeile 1: Die Spalten sind durch Semikolons getrennt. Die Liste mit Kommas zwischen den Spalten und Punkten in Zahlen sichern, 4.5.",
    "columns-missing": ({ columns: missing }) => `Zeile 1: Es fehlt ${t.and(missing)}; ${columns}.`,
    "column-unknown": ({ column }) => `Zeile 1: „${column}“ ist eine Spalte zu viel; ${columns}.`,
    cells: ({ line, cells, columns: wanted }) =>
      `Zeile ${t.whole(line)} hat ${t.whole(cells)} Werte für ${t.whole(wanted)} Spalten. Stehen Kommas in Zahlen, Punkte schreiben: 4.5 statt 4,5.`,
    "decimal-comma": (cell) => `${at(cell)}: ${found(cell)}; einen Punkt schreiben, ${cell.write}.`,
    "no-number": (cell) => `${at(cell)}: erwartet eine Zahl, ${found(cell)}.`,
    negative: (cell) =>
      `${at(cell)}: erwartet 0 oder mehr, ${found(cell)}. Noch einmal wiegen oder die Zeile weglassen.`,
    "nothing-used": (cell) =>
      `${at(cell)}: erwartet Gramm über 0, ${found(cell)}. Die Zeile weglassen, wenn nichts verbraucht wurde.`,
    "not-whole": (cell) => `${at(cell)}: erwartet eine ganze Zahl ab 1, ${found(cell)}.`,
    "too-large": (cell) => `${at(cell)}: erwartet höchstens ${t.whole(cell.most)}, ${found(cell)}.`,
    "more-slips": ({ count }) =>
      t.count(count, { one: "Und noch ein Fehler wie diese.", other: "Und noch # wie diese." }),
  }
}
