import type { CommandWords, command as english } from "../en/command"
import type { Tools } from "../tools"
import { classProblems } from "./classProblems"
import { classVerbs, headOptions } from "./classVerbs"

/** The headless command: what it explains of itself, and what it cannot use. */
export const command: typeof english = (t) => ({
  done: {},
  eachExplains: "Jedes Verb erklärt sich mit --help.",
  failed: (why) => `Partline konnte das nicht tun: ${why}`,
  language: (tags) => `Sprache der Sätze: ${tags.join(", ")}; ohne Angabe en-GB`,

  problems: {
    "unknown-verb": ({ verb, known }) => `„${verb}“ ist kein Verb: erwartet ${known.join(", ")}.`,
    "unknown-option": ({ option, known }) =>
      known.length > 0
        ? `--${option} ist keine Option dieses Verbs: erwartet ${known.map((name) => `--${name}`).join(", ")}.`
        : `--${option} ist keine Option dieses Verbs: erwartet keine Option.`,
    "given-twice": ({ option }) => `--${option} ist zweimal angegeben: erwartet einmal.`,
    "no-value": ({ option }) => `--${option}: danach wird ein Wert erwartet.`,
    "no-file-expected": ({ file }) => `„${file}“ wird hier nicht erwartet: Dieses Verb nimmt keine Datei.`,
    "file-missing": "FILE fehlt: erwartet der Pfad eines Plans.",
    "one-file-too-many": ({ file }) => `„${file}“ ist eine Datei zu viel: erwartet der Pfad eines Plans.`,
    "not-a-choice": ({ option, known, found }) =>
      found === null
        ? `--${option} fehlt: erwartet ${t.or(known)}.`
        : `--${option}: erwartet ${t.or(known)}, gefunden „${found}“.`,
    "out-missing": "--out fehlt: erwartet der Pfad des PDF, das geschrieben wird.",
    "cannot-write": ({ path }) =>
      `--out: „${path}“ kann nicht geschrieben werden: erwartet ein Pfad in einem vorhandenen Ordner.`,
    "cannot-read": ({ file }) =>
      `„${file}“ ist nicht lesbar: erwartet der Pfad eines von Partline gesicherten Plans.`,
    "cannot-read-list": ({ file }) =>
      `„${file}“ ist nicht lesbar: erwartet der Pfad einer Liste von Wägungen, CSV.`,
    "head-choose":
      "Kopfgröße: erwartet entweder --length --breadth --height oder --around --over --front-to-nape.",
    "measure-missing": ({ option }) => `--${option} fehlt: erwartet Millimeter.`,
    "measure-unusable": ({ option, found }) =>
      `--${option}: erwartet Millimeter über 0, gefunden „${found}“.`,
    "number-missing": ({ option }) => `--${option} fehlt: erwartet ${numbers[option]}.`,
    "number-unusable": ({ option, found }) =>
      `--${option}: erwartet ${numbers[option]}, gefunden „${found}“.`,
    "minutes-unusable": ({ option, found }) =>
      `--${option}: erwartet ${minutes[option]} über 0, gefunden „${found}“.`,
    "levels-together": "--from und --to: erwartet beide Tonhöhen oder keine.",
    "consent-missing":
      "--consent yes fehlt: Damit sagt der Salon, dass seine Werte weitergegeben werden dürfen. Daten von Gästen sind nicht darin.",
    "csv-out-missing": "--out fehlt: erwartet der Pfad der CSV, die geschrieben wird.",
    "start-out-missing": "--out fehlt: erwartet der Pfad der JSON, die geschrieben wird.",
    "nothing-to-learn":
      "Nichts zum Weitergeben: keine nach einer Behandlung gewogene Schale, keine Probesträhne und keine am Stuhl gemessene Zeit einer Folie. Mehr Pläne oder eine Liste von Wägungen angeben.",
    "too-few-salons": ({ salons, least }) =>
      `${t.count(salons, { one: "# Datei", other: "# Dateien" })}, eine pro Salon: erwartet mindestens ${t.whole(least)}.`,
    "cannot-read-folder": ({ folder }) => `„${folder}“ ist nicht lesbar: erwartet der Pfad eines Ordners.`,
    "client-missing": "--client fehlt: erwartet die Kennung oder der Name, wie das Verb clients sie nennt.",
    "client-unknown": ({ client }) => `--client: Hier ist niemand „${client}“. Das Verb clients nennt alle.`,
    "client-several": ({ client, ids }) =>
      `--client: Mehrere heißen „${client}“: erwartet eine der Kennungen ${ids.join(", ")}.`,
    "client-out-missing": "--out fehlt: erwartet der Pfad der JSON oder HTML, die geschrieben wird.",
    "sure-missing": ({ name, plans, files }) =>
      `--sure yes fehlt: ${name} würde endgültig gelöscht, ${t.count(plans, { one: "# Plan", other: "# Pläne" })}, aus ${files.join(", ")}. Nichts wurde geändert.`,
    "cannot-erase": ({ path }) =>
      `„${path}“ kann nicht gelöscht oder geschrieben werden: Was darin steht, ist noch da.`,
    "same-rows": ({ file, other }) =>
      `„${file}“ enthält dieselben Zeilen wie „${other}“: jeden Salon einmal angeben.`,
    "not-a-technique": ({ file, known }) =>
      `„${file}“ ist keine Technik: erwartet wird der Pfad einer Technikdatei oder eine von ${known.join(", ")}.`,
    "not-a-model": ({ file, known }) =>
      `„${file}“ ist keine Vorlage: erwartet wird der Pfad eines Plans oder einer Technikdatei oder eine von ${known.join(", ")}.`,
    "names-missing": "--names fehlt: erwartet wird der Pfad der Klasse, CSV mit der Spalte name.",
    "folder-out-missing": "--out fehlt: erwartet wird der Pfad des Ordners, in den geschrieben wird.",
    "plan-out-missing": "--out fehlt: erwartet wird der Pfad des Plans, der geschrieben wird.",
    "learner-missing": "LEARNER fehlt: erwartet wird nach der Vorlage der Pfad mindestens eines Plans.",
    "table-out-alone": "--names ist für eine Klasse: dazu wird --out, --sheets oder beides erwartet.",
    "learner-twice": ({ file }) =>
      `„${file}“: Eine andere Datei ergibt denselben Namen. Jede einmal angeben oder mit --names unterscheiden.`,
    "within-unusable": ({ found, known }) =>
      `--within: erwartet wird ${known.join(", ")}, jeweils mit einer Zahl über 0, etwa ${known[0]}=3; gefunden „${found}“.`,
    "no-room": ({ name, learner }) =>
      learner === null
        ? `${name} hat auf diesem Kopf keinen Platz.`
        : `${name} hat auf dem Kopf von ${learner} keinen Platz.`,
    "cannot-write-one": ({ path, written }) =>
      written.length === 0
        ? `„${path}“ kann nicht geschrieben werden: erwartet wird ein Ordner, in den geschrieben werden kann. Nichts wurde geschrieben.`
        : `„${path}“ kann nicht geschrieben werden: erwartet wird ein Ordner, in den geschrieben werden kann. Davor geschrieben: ${written.join(", ")}.`,
  },

  passedOn:
    "Nur Zahlen: In der Liste steht kein Name, keine Notiz, kein Produkt und kein Tag. Vor dem Weitergeben lesen.",
  joined:
    "Ein neuer Salon nimmt diese Datei unter „Rezeptur“, „Schalen wiegen“ auf; calibrate nimmt sie mit --start. Seine eigenen Schalen grenzen die Werte dann ein.",
  learn: learnProblems(t),
  classes: classProblems(t),
  progress: (done, count) => `${t.whole(done)} von ${t.whole(count)}`,

  overLegalLimit: (percent) =>
    `Hinweis: Erlaubt sind höchstens ${t.number(percent)} % in der EU und im Vereinigten Königreich, in einem gebrauchsfertigen Haarprodukt.`,

  verbs: {
    head: {
      summary:
        "Die Maße auf der Haut, die Fläche des Haars und seiner Zonen und die Punkte eines Kopfs dieser Größe.",
      details: [],
      options: headOptions,
    },
    measure: {
      summary:
        "Die Werte jeder Partie eines Plans, in der Reihenfolge des Legens, und ihre Summen, ohne Haar doppelt zu zählen.",
      details: [],
      options: {},
    },
    check: {
      summary:
        "Ob der Plan gemischt werden darf, mit Stopps und Warnhinweisen: Exit 1 bei einem Stopp, 3 bei nicht Erfragtem, 0 wenn freigegeben.",
      details: [],
      options: {},
    },
    mix: {
      summary: "Was für den Plan zu mischen ist: Stärke, benötigte Gramm und jede Schale mit ihrer Minute.",
      details: [],
      options: {},
    },
    sheet: {
      summary: "Ein Blatt eines Plans als PDF; das zum Mitnehmen auch als Seite für einen Browser.",
      details: ["--language ist die Sprache des Blatts; Sätze über den Befehl stehen in der von --messages."],
      options: {
        kind: "placement, technique, take-home oder record",
        paper: "a4 oder letter; ohne Angabe letter für en-US, sonst a4",
        out: "wohin das PDF geschrieben wird; take-home mit der Endung .html wird eine Seite für einen Browser",
        front:
          "die Vorderansicht, wie Sie vor dem Gast stehen (facing) oder im Spiegel (mirror); ohne Angabe facing",
        messages: "Sprache der Sätze über den Befehl; ohne Angabe en-GB",
      },
    },
    validate: {
      summary: "Ob eine Datei ein Plan ist, der sich öffnen lässt, und was sonst daran falsch ist.",
      details: [],
      options: {},
    },
    blend: {
      summary: "Gramm jeder Flasche, die zusammen die gewünschte Stärke ergeben, nach Masse.",
      details: [],
      options: {
        have: "Prozente der Flaschen, ein Komma dazwischen: 12,3",
        want: "gewünschte Prozente: 6",
        grams: "gewünschte Gramm insgesamt: 90",
      },
    },
    calibrate: {
      summary:
        "Gramm pro Folie, Einziehen und Aufliegen, gelernt aus gewogenen Folien oder Schalen (Spalten hairG,strandAreaCm2,productG und, bei Schalen, foils), mit Spannen von 80 %.",
      details: [],
      options: { start: "zusammengeführte Werte als Anfang (learn join); ohne Angabe die Startwerte" },
    },
    clients: {
      summary: "Die Gäste eines Ordners: wer, wie viele Pläne, wann zuletzt da und in welchen Dateien.",
      details: [
        "Liest die Dateien auf .json, die im Ordner selbst liegen: Pläne, Karten, Dateien von Gästen und Datensicherungen. Kein",
        "Plan nennt seinen Gast: Das tut die Datei eines Gastes oder eine Sicherung. unread: Dateien, von denen niemand weiß, wessen.",
      ],
      options: {},
    },
    export: {
      summary:
        "Alles, was ein Ordner von einem Gast enthält, als Datei, die Partline wieder öffnet, oder als Seite zum Lesen.",
      details: ["Sie enthält die Gesundheitsangaben und ist nicht verschlossen."],
      options: {
        client: "Kennung oder Name des Gastes, wie das Verb clients sie nennt",
        out: "wohin geschrieben wird; endet es auf .html, ist es eine Seite zum Lesen",
      },
    },
    erase: {
      summary:
        "Löscht einen Gast endgültig aus einem Ordner: Karte, Pläne und Datei, und aus Sicherungen ihn allein. Techniken bleiben.",
      details: [
        "Ohne --sure sagt es, was ginge, und ändert nichts. Nennt die gelöschten und neu geschriebenen Dateien und die nicht lesbaren:",
        "Diese selbst durchsehen. Kopien in anderen Ordnern und gedruckte Blätter werden nicht erreicht.",
      ],
      options: {
        client: "Kennung oder Name des Gastes, wie das Verb clients sie nennt",
        sure: "yes: alles geht endgültig",
      },
    },
    "learn export": {
      summary:
        "Was ein Salon gelernt hat, als kleine Liste zum Weitergeben: Wägungen, Probesträhnen und Tempo, ohne Daten von Gästen.",
      details: [
        "Nimmt Pläne mit ihren Behandlungen und Listen von Wägungen; eine Schale zählt, wenn sie nach der Behandlung gewogen wurde.",
        "Die Zeilen 1 und 2 der Liste sind die Spalten und ihre Einheiten. Zeilen: weighing (kind, foils, hairG, strandAreaCm2,",
        "productG), strand (eine Kontrolle pro Zeile) und pace (gestoppte Folien einer Person, Mittel und Streuung). Sonst nichts.",
      ],
      options: {
        consent: "yes: Der Salon ist einverstanden, dass seine Werte weitergegeben werden",
        out: "wohin die CSV geschrieben wird",
      },
    },
    "learn join": {
      summary: "Die Listen von drei oder mehr Salons, zusammengeführt zu dem, womit ein neuer Salon beginnt.",
      details: [
        "Gibt jeden Wert für einen neuen Salon mit seiner Spanne von 80 % aus (halfTimeMin: zwei Drittel der Köpfe) und wie weit",
        "Salons auseinanderliegen: Anteil, eine Standardabweichung. null bei weniger als drei Salons; der Wert bleibt, wie er war.",
      ],
      options: {
        out: "wohin die zusammengeführten Werte geschrieben werden, JSON",
      },
    },
    ...classVerbs,
    timing: {
      summary:
        "Wann jede Folie gelegt wird, fertig sein kann und abgenommen wird, die Schalen und Kontrollen und die Konflikte.",
      details: [
        "Gibt foils, bowls, looks, firstOnMin, lastOnMin, rinseMin und conflicts aus; dazu chairMin (der ganze Termin, eine",
        "Spanne), heat (wann an und aus, oder null), steps (rinse, detangle, Toner nach Zone, dry) und je Schale Mischung und",
        "Partien. Ein Ende von readyMin ist null, wo das Ziel nicht rechtzeitig erreicht wird. Regeln von conflicts: over-run,",
        "under-processed, pot-life, booking und hairline-ahead (ein Ausspülen, die Haarlinie lange vor dem Hinterkopf fertig).",
      ],
      options: {
        pace: "Minuten pro Folie, von einer zur nächsten; ohne Angabe das Tempo des Plans",
        hands: "1: die Fachkraft, 2: mit Assistenz; ohne Angabe wie im Plan",
        rinse:
          "each: jede Folie ab, sobald sie fertig ist; together: alle zusammen ausgespült; ohne Angabe wie im Plan",
        from: "Tonhöhe des Haars jetzt, 1 bis 10; mit --to; ohne Angabe die Tonhöhen des Plans",
        to: "Zieltonhöhe; ohne sie sind Folien fertig, wenn die meisten es sind",
        booking: "gebuchte Minuten; ohne Angabe die des Plans",
      },
    },
  },
})

const learnProblems = (t: Tools): CommandWords["learn"] => {
  const at = ({ line, column, found }: { line: number; column: string; found: string }) =>
    `Zeile ${t.whole(line)}, ${column}: ${found === "" ? "sie ist leer" : `gefunden „${found}“`}`
  const strands = {
    order: "Ihre Kontrollen sind nicht in zeitlicher Reihenfolge oder liegen nach der Höchstzeit",
    printed: "Die kleinere angegebene Aufhellung liegt über der größeren",
    alike:
      "Ihre Zeilen unterscheiden sich in Stärke, angegebener Aufhellung, Höchstzeit oder Ausgangstonhöhe",
    "too-many": "Sie hat mehr Kontrollen als eine Probesträhne",
  }
  return {
    "too-large": ({ mostMb }) =>
      `Erwartet eine Liste von höchstens ${t.whole(mostMb)} MB. Ist das eine andere Datei?`,
    "columns-missing": ({ columns }) =>
      `Zeile 1: Es fehlt ${t.and(columns)}. Die Liste mit learn export noch einmal schreiben.`,
    "column-unknown": ({ column }) =>
      `Zeile 1: „${column}“ ist keine Spalte einer solchen Liste. Die Spalte herausnehmen.`,
    unit: (cell) => `${at(cell)}; erwartet die Einheit ${cell.unit}.`,
    cells: ({ line, cells, columns }) =>
      `Zeile ${t.whole(line)} hat ${t.whole(cells)} Werte für ${t.whole(columns)} Spalten. Stehen Kommas in Zahlen, Punkte schreiben: 4.5 statt 4,5.`,
    word: (cell) =>
      cell.known.length > 0
        ? `${at(cell)}; erwartet ${t.or(cell.known)}.`
        : `${at(cell)}; hier wird nichts erwartet. Das Feld leeren.`,
    number: (cell) =>
      `${at(cell)}; erwartet eine ${cell.isWhole ? "ganze Zahl" : "Zahl"} von ${t.number(cell.low, 2)} bis ${t.number(cell.high, 2)}. Berichtigen oder die Zeile herausnehmen.`,
    "not-of-row": (cell) => `${at(cell)}; eine Zeile ${cell.row} hat hier nichts. Das Feld leeren.`,
    strand: ({ strand, why }) =>
      `Strähne ${t.whole(strand)}: ${strands[why]}. Ihre Zeilen berichtigen oder herausnehmen.`,
    "no-rows": "Die Liste hat keine Zeilen.",
    more: ({ count }) =>
      t.count(count, { one: "Und noch ein Fehler wie diese.", other: "Und noch # wie diese." }),
  }
}

const numbers = {
  have: "Prozente mit einem Komma dazwischen, 12,3",
  want: "ein Prozentwert, 6 oder 7.5",
  grams: "Gramm, 90 oder 37.5",
}
const minutes = { pace: "Minuten pro Folie", booking: "Minuten" }
