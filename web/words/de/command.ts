import type { command as english } from "../en/command"

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
  },

  overLegalLimit: (percent) =>
    `Hinweis: Die EU und das Vereinigte Königreich erlauben höchstens ${t.number(percent)} % in einem gebrauchsfertigen Haarprodukt.`,

  verbs: {
    head: {
      summary:
        "Die Maße auf der Haut, die Fläche des Haars und seiner Zonen und die Punkte eines Kopfs dieser Größe.",
      details: [],
      options: {
        length: "mm, Braue bis Hinterkopf, mit dem Messzirkel",
        breadth: "mm, an der breitesten Stelle, mit dem Messzirkel",
        height: "mm, Ohr bis oben, mit dem Messzirkel",
        around: "mm, um den Kopf, mit dem Maßband",
        over: "mm, Ohr zu Ohr über den Oberkopf, mit dem Maßband",
        "front-to-nape": "mm, vordere Haarlinie bis Nacken über den Oberkopf, mit dem Maßband",
        hairline: "round, straight, receding oder peaked; ohne Angabe round",
      },
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
      summary: "Ein Blatt eines Plans als PDF.",
      details: ["--language ist die Sprache des Blatts; Sätze über den Befehl stehen in der von --messages."],
      options: {
        kind: "placement, technique, take-home oder record",
        paper: "a4 oder letter; ohne Angabe letter für en-US, sonst a4",
        out: "wohin das PDF geschrieben wird",
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
      options: {},
    },
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

const numbers = {
  have: "Prozente mit einem Komma dazwischen, 12,3",
  want: "ein Prozentwert, 6 oder 7.5",
  grams: "Gramm, 90 oder 37.5",
}
const minutes = { pace: "Minuten pro Folie", booking: "Minuten" }
