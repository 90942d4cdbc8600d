import type { client as english } from "../../en/client/client"
import { hairLine, histories, levelNames, porosities, stretches } from "./hair"
import { questions } from "./questions"
import { lookWindow, strandFaults } from "./strandTests"

type Client = ReturnType<typeof english>

export const client: typeof english = (t, places) => {
  const capitals = <K extends string>(names: Readonly<Record<K, string>>) =>
    Object.fromEntries(Object.entries<string>(names).map(([key, name]) => [key, t.capital(name)])) as Record<
      K,
      string
    >
  return {
    title: "Gast",
    done: {
      answer: "Frage beantworten",
      "confirm-answers": "Antworten von einem anderen Tag bestätigen",
      "set-asked-by": "Eintragen, wer fragt",
      "set-allergy": "Allergie beschreiben",
      "set-henna-date": "Datum des Henna-Tattoos eintragen",
      "answer-rest": "Rest mit Nein beantworten",
      "clear-answer": "Antwort leeren",
      "set-age": "Alter eintragen",
      "clear-age": "Alter leeren",
      "set-scalp": "Kopfhaut eintragen",
      "clear-scalp": "Kopfhaut leeren",
      "set-level": "Tonhöhe jetzt eintragen",
      "set-history": "Haargeschichte eintragen",
      "set-porosity": "Porosität eintragen",
      "clear-porosity": "Porosität leeren",
      "set-stretch": "Elastizität eintragen",
      "clear-stretch": "Elastizität leeren",
      "set-target": "Zieltonhöhe eintragen",
      "set-finish": "Endton eintragen",
      "clear-finish": "Endton leeren",
      "set-brightest": "Hellste Stelle eintragen",
      "set-root": "Nähe zum Ansatz eintragen",
      "set-upkeep": "Wochen zwischen Terminen eintragen",
      "set-grey": "Grau eintragen",
      "apply-test": "Hauttest auftragen",
      "record-test": "Hauttest eintragen",
      "remove-test": "Hauttest entfernen",
      "record-strand": "Probesträhne eintragen",
      "rename-plan": "Plan umbenennen",
      "set-day": "Datum ändern",
      "set-initials": "Initialen ändern",
      "set-hairline": ({ form }) => `Haarlinie wählen: ${hairlineForms[form]}`,
      "average-head": "Durchschnittskopf verwenden",
      "tape-head": "Kopf mit dem Maßband messen",
      "caliper-head": "Kopf mit dem Messzirkel messen",
      "set-head-size": "Kopfgröße ändern",
      "set-density": "Haardichte ändern",
      "set-texture": "Haarstärke ändern",
      "set-length": ({ where }) => `Länge ändern: ${lengthPlacesInside[where]}`,
    },
    caution:
      "Partline plant die Arbeit; es stellt keine Diagnose. Tests und Herstellerangaben gehen vor, und jede Zahl ist eine Schätzung mit Spanne.",
    plan: {
      title: "Plan",
      name: "Name des Plans",
      day: "Datum",
      initials: "Initialen",
      initialsHint: "Nur Initialen: Die Karte hängt, wo andere sie lesen.",
    },
    consultation: { hide: "Gesundheit ausblenden", show: "Gesundheit zeigen" },
    steps: {
      ask: "Fragen",
      hair: "Haar",
      head: "Kopf",
      goal: "Wunsch des Gastes",
      count: (done, of) => `${t.whole(done)} von ${t.whole(of)}`,
    },
    ask: {
      askedBy: "Gefragt von",
      alone: "Einzeln fragen",
      together: "Auch diese fragen",
      inherited: (day) =>
        day === null
          ? "An einem anderen Tag beantwortet: zum Bestätigen dieselbe Antwort antippen."
          : `Am ${t.date(day)} beantwortet: zum Bestätigen dieselbe Antwort antippen.`,
      confirm: (count) =>
        t.count(count, {
          one: "Ich habe noch einmal gefragt: # Antwort ist unverändert",
          other: "Ich habe noch einmal gefragt: # Antworten sind unverändert",
        }),
      allergy: { which: "Wogegen?", when: "Seit wann?", how: "Wie zeigt sie sich?" },
      hennaOn: "Datum des Tattoos",
      age: "Alter",
      ageNotKnown: "Alter, nicht gefragt",
      years: "Jahre",
      scalp: "Kopfhaut",
      scalps: {
        calm: "Ruhig",
        sensitive: "Empfindlich",
        irritated: "Gereizt",
        broken: "Verletzt",
      },
      rest: (count) =>
        t.count(count, {
          one: "Ich habe alle gefragt: „Nein“ zur letzten offenen",
          other: "Ich habe alle gefragt: „Nein“ zu den # offenen",
        }),
    },
    questions,
    hair: {
      title: "Das Haar jetzt",
      where: "Wo",
      allOver: "Ganzer Kopf",
      zones: capitals(places.zones),
      parts: capitals(places.strandParts),
      along: "Entlang der Strähne",
      rootToEnds: "Ansatz bis Spitzen",
      level: "Tonhöhe jetzt",
      levelNamed: (legend, level) => `${legend}: ${level}, ${levelNames[level]}`,
      levelNames,
      history: "Haargeschichte",
      neverTreated: "Unbehandelt",
      histories,
      porosity: "Porosität",
      porosities,
      stretch: "Elastizität, nass gedehnt",
      stretches,
      line: hairLine(t, places),
    },
    measures: {
      title: "Haar",
      density: "Haardichte",
      densityUnit: "pro cm²",
      densities: { low: "Gering", medium: "Mittel", high: "Hoch" },
      texture: "Haarstärke",
      textureUnit: "µm",
      textures: { fine: "Fein", medium: "Mittel", coarse: "Dick" },
      withFigure: (word, value) => `${word} ${t.number(value)}`,
      length: "Länge, glatt gekämmt",
      lengthPlaces,
      lengthOf: {
        front: "Länge vorn",
        sides: "Länge an den Seiten",
        back: "Länge hinten",
      },
      lengths,
      lengthOption: (place, cm) => `${lengths[place]}, ${cm} cm`,
      lengthAbove: (place) => `Oberhalb ${lengthsOf[place]}`,
      lengthBelow: (place) => `Unterhalb ${lengthsOf[place]}`,
      lengthBetween: (from, to) => `${lengths[from]} bis ${lengths[to]}`,
    },
    goals: {
      title: "Wunsch des Gastes",
      target: "Zieltonhöhe, vor dem Toner",
      finish: "Endton",
      finishes: { cool: "Kühl", neutral: "Neutral", warm: "Warm" },
      brightest: "Wo am hellsten",
      root: "Wie nah am Ansatz",
      roots: { tight: "Dicht", standard: "Üblich", soft: "Weich" },
      rootOption: (word, mm) => `${word}, ${t.mm(mm)}`,
      upkeep: "Wochen zwischen Terminen",
      upkeepOther: "oder eine andere Zahl",
      weeks: "Wochen",
      grey: "Grau",
      greys: {
        "0": "Kein Grau",
        "0.1": "Ein Zehntel",
        "0.25": "Ein Viertel",
        "0.5": "Die Hälfte",
        "0.75": "Das meiste",
        "1": "Alles",
      },
    },
    tests: {
      title: "Hauttests (Allergieverdachtstests)",
      applyNow: (product) => `Test jetzt auftragen: ${product}`,
      orOther: "oder ein anderes Produkt",
      product: "Produkt für den Test",
      choose: "Bitte wählen",
      apply: "Test jetzt auftragen",
      clear: (readOn) =>
        `Ohne Reaktion, abgelesen am ${t.date(readOn)}. Gilt heute nach der Frist des Herstellers oder des Salons.`,
      place: "Stelle auf der Haut",
      placeHint: "wo der Hersteller es angibt",
      applied: "Aufgetragen",
      result: "Ergebnis",
      results: { unread: "Noch nicht abgelesen", clear: "Ohne Reaktion", reacted: "Reaktion" },
      readBy: "Abgelesen von",
      readOn: "Abgelesen am",
      changed: "Hat sich seither etwas geändert?",
      validUntil: "Gültig bis (laut Hersteller)",
      remove: "Entfernen",
    },
    strandTests: {
      title: "Probesträhne",
      outcomes: { held: "Bestanden", failed: "Nicht bestanden" },
      others: "Andere Produkte",
    },
    head: {
      /** A tape that the two others contradict; it is taken all the same. */
      contradicts: ({ name, byMm }) =>
        `${name}: ${t.mm(Math.abs(byMm))} ${byMm > 0 ? "mehr" : "weniger"}, als die beiden anderen erwarten lassen. Noch einmal messen; bis dahin zählt dieses Maß weniger.`,
      size: "Kopfgröße",
      measured: "Gemessen",
      ways: { average: "Durchschnitt", tape: "Maßband", caliper: "Messzirkel" },
      units: "Einheiten",
      unitNames: { metric: "Metrisch", inches: "Zoll" },
      average: (around, over, frontToNape) =>
        `Durchschnittlicher Kopf, erwachsen: Umfang ${around}, über den Oberkopf ${over}, Stirn bis Nacken ${frontToNape}. Messen, damit es zum Gast passt.`,
      hairline: "Haarlinie",
      measures: {
        aroundMm: {
          name: "Umfang",
          hint: (low, high, unit) => `Üblich ${low} bis ${high} ${unit}: über die Brauen und hinten herum.`,
        },
        overMm: {
          name: "Über den Oberkopf",
          hint: (low, high, unit) =>
            `Üblich ${low} bis ${high} ${unit}: von der Vorderkante eines Gehörgangs zum anderen.`,
        },
        frontToNapeMm: {
          name: "Stirn bis Nacken",
          hint: (low, high, unit) =>
            `Üblich ${low} bis ${high} ${unit}: von der vorderen Haarlinie bis zur Nackenmulde.`,
        },
        lengthMm: {
          name: "Länge",
          hint: (low, high, unit) =>
            `Üblich ${low} bis ${high} ${unit}: von zwischen den Brauen bis zum Hinterkopf.`,
        },
        breadthMm: {
          name: "Breite",
          hint: (low, high, unit) =>
            `Üblich ${low} bis ${high} ${unit}: an der breitesten Stelle, über den Ohren.`,
        },
        heightMm: {
          name: "Höhe",
          hint: (low, high, unit) =>
            `Üblich ${low} bis ${high} ${unit}: vom Gehörgang bis zum Scheitelpunkt, aufrecht.`,
        },
      },
      hairlines: hairlineForms,
      whole: "An diesem Kopf",
      area: "Behaarte Fläche",
      hairs: "Haare insgesamt",
    },
    strandFaults: strandFaults(t),
    lookWindow: lookWindow(t),
  }
}

const lengthPlaces: Client["measures"]["lengthPlaces"] = { front: "Vorn", sides: "Seiten", back: "Hinten" }
const lengthPlacesInside: Client["measures"]["lengthPlaces"] = {
  front: "vorn",
  sides: "Seiten",
  back: "hinten",
}

const lengths: Client["measures"]["lengths"] = {
  brow: "Braue",
  ear: "Ohr",
  cheek: "Wange",
  chin: "Kinn",
  shoulder: "Schulter",
  collarbone: "Schlüsselbein",
  "shoulder blade": "Schulterblatt",
  "bra line": "BH-Linie",
  waist: "Taille",
}
const lengthsOf: Client["measures"]["lengths"] = {
  brow: "der Braue",
  ear: "des Ohrs",
  cheek: "der Wange",
  chin: "des Kinns",
  shoulder: "der Schulter",
  collarbone: "des Schlüsselbeins",
  "shoulder blade": "des Schulterblatts",
  "bra line": "der BH-Linie",
  waist: "der Taille",
}

const hairlineForms: Client["head"]["hairlines"] = {
  round: "Rund",
  straight: "Gerade",
  receding: "Zurückweichend",
  peaked: "Spitz",
}
