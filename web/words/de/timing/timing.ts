import type { timing as english } from "../../en/timing/timing"
import type { Tools } from "../../tools"
import { clashes } from "./clashes"
import { settings } from "./settings"

export const timing: typeof english = (t) => {
  const found = clashes(t)
  return {
    title: "Zeiten",
    none: "Warum es keine Uhr gibt",
    toPlacement: "Erste Folie zeichnen",
    toChair: "Am Stuhl starten",

    done: {
      ...found.fixes,
      "set-pace": "Tempo ändern",
      "set-hands": "Ändern, wer arbeitet",
      "set-people": "Namen ändern",
      "set-side": "Seite der Assistenz ändern",
      "set-rinse": "Ändern, wie Folien abgenommen werden",
      "set-lift": "Tonhöhen ändern",
      "set-booking": "Termindauer ändern",
      "set-drying": "Trocknen ändern",
      "set-heat": "Wärme ändern",
      "set-breaks": "Pausen ändern",
      "learn-pace": "Mit gemessenem Tempo planen",
      "learn-second-pace": "Assistenz mit gemessenem Tempo planen",
      "set-strand": "Probesträhne sichern",
      "remove-strand": "Probesträhne entfernen",
      "bring-back": "Folien für einen anderen Tag zurückholen",
      "own-visit": "Folien für einen anderen Tag in einen eigenen Plan verschieben",
      "usual-bowls": "Schalen wie üblich aufteilen",
      "next-time": "Notiz fürs nächste Mal sichern",
    },

    figures: {
      lastOn: (piece) =>
        ({ foil: "Letzte Folie gelegt", panel: "Letzte Malpartie gelegt", both: "Letzte gelegt" })[piece],
      firstCheck: "Erste Kontrolle",
      lastOff: (piece) =>
        ({ foil: "Letzte Folie ab", panel: "Letzte Malpartie ab", both: "Letzte ab" })[piece],
      inChair: "Am Stuhl",
      minute: (min) => `Minute ${t.whole(min)}`,
      noCheck: "–",
      span: ({ low, high }) => {
        const [from, to] = [hours(t, low), hours(t, high)]
        return from === to ? from : `${from} bis ${to}`
      },
    },

    chart: {
      title: "Minute für Minute",
      name: "Diagramm des Termins; die Tabelle darunter sagt dasselbe",
      min: "min",
      break: "Pause",
      firstRests: "Fachkraft in Pause",
      secondRests: "Assistenz in Pause",
      heat: "Wärme",
      key: ({ limit }) =>
        `Balken: Zeit im Haar. Umriss: kann fertig sein. ${limit}: Höchstzeit. Gepunktet: eine Kontrolle. Dreieck: diese Schale mischen.`,
      limit: "Rote Linie",
    },

    head: {
      title: "Der Kopf in einer Minute",
      slider: "Minute des Termins",
      views: {
        front: "Vorn",
        right: "Gast rechts",
        left: "Gast links",
        back: "Hinten",
        top: "Oben",
      },
      key: "Dunkler = länger im Haar; Schwarz = Höchstzeit. Gepunktet = liegt noch nicht. Umriss = ab. Zeigt Zeit, kein Ergebnis.",
      onMap: "Auf der großen Karte zeigen",
    },

    table: {
      title: (piece) =>
        ({
          foil: "Zeiten jeder Folie",
          panel: "Zeiten jeder Malpartie",
          both: "Zeiten jeder Folie und Malpartie",
        })[piece],
      name: (piece) =>
        ({
          foil: "Zeiten aller Folien",
          panel: "Zeiten aller Malpartien",
          both: "Zeiten aller Folien und Malpartien",
        })[piece],
      foil: (piece) => ({ foil: "Folie", panel: "Malpartie", both: "Folie oder Malpartie" })[piece],
      on: "Auf",
      check: "Kontrolle",
      ready: "Fertig von–bis",
      off: "Ab",
      limit: "Höchstzeit (ab bis)",
      minutesOn: "Einwirkzeit",
      what: ({ kind, place }) => `${t.capital(kind)}, ${place}`,
      none: "–",
      readyRange: ({ low, high }) => {
        if (Number.isFinite(high)) return t.spread(t.whole(low), t.whole(high))
        return Number.isFinite(low) ? `${t.whole(low)} oder nicht rechtzeitig` : "nicht rechtzeitig"
      },
      minute: t.whole,
    },

    after: {
      title: (piece) =>
        ({
          foil: "Nach der letzten Folie",
          panel: "Nach der letzten Malpartie",
          both: "Nach der letzten Folie oder Malpartie",
        })[piece],
      rinse: "Ausspülen",
      detangle: "Die Toupage entwirren, nass, von den Spitzen aufwärts",
      dry: "Trocknen",
      toners: {
        "root-melt": "Ansatzverlauf",
        mids: "Toner, Längen",
        hairline: "Toner, Haarlinie",
      },
      line: ({ what, from, to }) => `${what}: Minute ${t.whole(from)} bis ${t.whole(to)}`,
    },

    strand: {
      title: "Probesträhne",
      testedIn: "Getestet in",
      mix: ({ mix, volume }) => `Mischung ${mix}, ${t.number(volume)} Vol`,
      otherMix: ({ product, volume }) =>
        `Eine Strähne wurde in ${product} mit ${t.number(volume)} Vol getestet. So ist jetzt keine Mischung; sie sagt trotzdem etwas über das Haar.`,
      before: "Tonhöhe der Strähne vorher",
      remove: "Test entfernen",
      add: "Kontrolle der Strähne hinzufügen",
      minutes: "Einwirkzeit",
      level: "Gesehene Tonhöhe",
      removeRow: "Entfernen",
      noCurve: (mix) =>
        `${mix}: Das Produktblatt nennt für diesen Entwickler keine Aufhellung, also gibt es keine Kurve. Die Strähne kontrollieren und aufschreiben.`,
      untilThen: (fault) => `${fault} Bis dahin gilt die Kurve des Produktblatts.`,
      noGoal: "Die Zieltonhöhe eingeben; dann folgen die Minuten für die Kontrolle.",
      curve: "Kurve",
      curveName: (mix) =>
        `Aufhellungskurve von ${mix} nach Einwirkzeit; der Satz darüber sagt, was daraus folgt`,
      key: "Linie: die Mitte. Band: vier von fünf Köpfen. Gestrichelt: die Zieltonhöhe. Eine Schätzung, nie ein Versprechen: Das Haar entscheidet.",
      dots: "Punkte: die Strähne.",
      borrowed: "Aus der Strähne in der anderen Mischung: Es ist dasselbe Haar.",
      misfit: "Die Strähne folgt der Kurve nicht gut: öfter kontrollieren.",
      minutesOn: "Einwirkzeit, Minuten",
    },

    actual: {
      title: "Geplant und tatsächlich",
      when: (wallMs) => `${t.dayAndTime(wallMs)}. Minuten zählen ab dem ersten Scheitel.`,
      name: (piece) =>
        ({
          foil: "Geplante und tatsächliche Zeiten aller Folien",
          panel: "Geplante und tatsächliche Zeiten aller Malpartien",
          both: "Geplante und tatsächliche Zeiten aller Folien und Malpartien",
        })[piece],
      foil: (piece) => ({ foil: "Folie", panel: "Malpartie", both: "Folie oder Malpartie" })[piece],
      onPlanned: "Auf, geplant",
      onActual: "Auf, tatsächlich",
      minutesPlanned: "Einwirkzeit, geplant",
      minutesActual: "Einwirkzeit, tatsächlich",
      notOn: "nicht gelegt",
      none: "–",
      minute: t.whole,
    },

    lessons: {
      title: "Tempo am Stuhl",
      name: "Minuten pro Folie, nach Person und Art",
      who: "Wer",
      timed: "Gemessene Folien",
      kind: (kind) => `${t.capital(kind)}, min`,
      noName: "Kein Name angegeben",
      foils: ({ foils, services }) =>
        `${t.whole(foils)} in ${t.count(services, { one: "# Behandlung", other: "# Behandlungen" })}`,
      range: ({ low, high }) => t.spread(t.fixed(low, 1), t.fixed(high, 1)),
      none: "–",
      planWith: (person) => (person ? `Mit dem Tempo von ${person} planen` : "Mit diesem Tempo planen"),
      asAssistant: (person) => (person ? `${person} als Assistenz` : "Assistenz mit diesem Tempo"),
    },

    alarms: {
      title: "Was schiefging",
      line: ({ wallMs, what }) => `${t.dayAndTime(wallMs)}: ${what}`,
    },

    nextTime: {
      title: "Nächstes Mal",
      where: "Steht auf der Karteikarte, nicht auf der Platzierungskarte.",
    },

    command: {
      lift: "Die Zeiten sind aus der Aufhellung auf dem Produktblatt geschätzt. Eine Probesträhne grenzt sie ein; kontrollieren und abnehmen, was fertig ist.",
      noLift:
        "Ohne --from und --to sind es typische Zeiten (eine Annahme). Kontrollieren und abnehmen, was fertig ist.",
    },

    assumedTitle: "Was angenommen ist",
    ...found,
    settings: settings(t),
  }
}

function hours(t: Tools, min: number): string {
  const rounded = Math.round(min / 5) * 5
  const [whole, rest] = [Math.floor(rounded / 60), rounded % 60]
  if (whole === 0) return t.minutes(rest)
  return rest === 0 ? `${whole} h` : `${whole} h ${rest}`
}
