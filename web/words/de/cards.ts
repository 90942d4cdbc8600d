import { visitLimits } from "../../../presets/timing/visitLimits"
import type { ComesFor } from "../../core/calendar/daysToCome"
import { coatLetters } from "../../core/placement/coatCodes"
import type { CardsWords } from "../en/cards"
import type { Tools } from "../tools"
import { pieces } from "./common/pieces"

/** The client over time: cards, the visit before, and what has grown since. */
export const cards = (t: Tools): CardsWords => ({
  done: {
    "put-on-card": "Plan auf eine Karte legen",
    regrow: "Nachwuchs festlegen",
    "propose-regrowth": "Nachwuchs vorschlagen",
    "measure-regrowth": "Nachwuchs messen",
  },
  title: "Gäste",
  open: "Gäste…",
  find: "Gast suchen",
  order: "Sortieren nach",
  orders: { name: "Name", last: "Letzter Besuch", due: "Als Nächstes fällig" },
  newName: "Initialen oder Name",
  make: "Neue Karte",
  none: "Noch keine Karten. Karten bleiben in diesem Browser.",
  nothingFound: "Keine Karte gefunden.",
  more: (count) => t.count(count, { one: "# weitere zeigen", other: "# weitere zeigen" }),
  lastDay: (day) => (day === null ? "noch kein Besuch" : `letzter Besuch ${t.date(day)}`),
  due: (due) =>
    due.planned
      ? `geplant für ${t.date(due.day)}`
      : due.from === due.to
        ? `fällig ${t.date(due.from)}`
        : `fällig ${t.days(due.from, due.to)}`,
  all: "Alle Gäste",
  unread: (why) => `Diese Karte ist nicht lesbar und bleibt, wie sie ist. ${why}`,
  import: {
    open: "Namen importieren…",
    file: "Datei mit Namen",
    how: "Eine Text- oder CSV-Datei: ein Name je Zeile oder eine Tabelle mit den Spalten Name, Telefon, Notiz.",
    found: (count) => t.count(count, { one: "# neuer Name", other: "# neue Namen" }),
    known: (count) => t.count(count, { one: "# ist schon da", other: "# sind schon da" }),
    empty: (count) => t.count(count, { one: "# Zeile ohne Namen", other: "# Zeilen ohne Namen" }),
    unfit: (rows) => `Zeilen, die auf keine Karte passen: ${rows.join(", ")}`,
    left: (count) => t.count(count, { one: "# Zeile zu viel", other: "# Zeilen zu viel" }),
    told: (items) => `${t.capital(t.and(items))}.`,
    take: (count) => t.count(count, { one: "# Karte anlegen", other: "# Karten anlegen" }),
    tooLarge: (mostMb) => `Diese Datei ist größer als ${mostMb} MB. Nichts davon wurde gelesen.`,
  },
  card: {
    name: "Initialen oder Name",
    phone: "Telefon",
    colour: "Farbe der Karte",
    colours: { none: "Keine", blue: "Blau", orange: "Orange", green: "Grün", purple: "Violett" },
    sheetLanguage: "Sprache der Blätter für den Gast",
    note: "Notizen",
    consent: "Der Gast erlaubt, diese Karte zu führen",
    consentOn: (day) => `Gesagt am ${t.date(day)}.`,
  },
  allergies: {
    title: "Bestehende Allergien",
    why: "Sie stoppen jeden Plan dieses Gastes, bis sie am Tag bestätigt sind. Eine Antwort von heute nimmt keine zurück.",
    kind: "Allergie gegen",
    kinds: { dye: "Haarfarbe oder Blondierung", other: "etwas anderes", "not-known": "Unbekannt" },
    to: "Wogegen",
    since: "Seit wann",
    add: "Allergie hinzufügen",
    remove: (to) => `Allergie entfernen ${to}`.trim(),
  },
  visits: {
    title: "Besuche",
    none: "Auf dieser Karte liegt noch kein Plan.",
    line: ({ day, served }) =>
      `${day === null ? "ohne Datum" : t.date(day)}, ${served ? "gemacht" : "geplant"}`,
    openNow: "jetzt offen",
    next: "Nächster Besuch, heute",
    nextHow: "Ein neuer Plan für heute aus dem letzten. Was zum Tag gehört, wird neu gefragt.",
    putHere: "Den offenen Plan auf diese Karte legen",
    takeOff: "Den offenen Plan von dieser Karte nehmen",
  },
  calendar: {
    add: "In einen Kalender legen",
    holds: "Eine Datei mit den Initialen und den Tagen, sonst nichts. An jeden wird am Tag davor erinnert.",
    fileName: "termine",
    title: ({ what, isTest }, initials) => {
      const days = {
        visit: "Termin",
        toner: "Toner fällig",
        frame: "Gesichtsrahmen fällig",
      } satisfies Record<ComesFor, string>
      return [isTest ? "Hauttest bis heute auftragen" : days[what], initials]
        .filter((part) => part !== "")
        .join(": ")
    },
    text: ({ isTest, day, until }) =>
      isTest
        ? `Mindestens ${visitLimits.alertTestHours} Stunden vor dem Termin, und länger, wo der Hersteller es sagt.`
        : until === null
          ? "Was zum Tag gehört, wird neu gefragt."
          : `Zwischen dem ${t.date(day)} und dem ${t.date(until)}.`,
  },
  merge: {
    title: "Mit einer anderen Karte zusammenlegen",
    how: "Für zwei Karten einer Person. Notizen, Allergien und Besuche beider bleiben.",
    ask: (one, other) =>
      `${one} und ${other} werden eine Karte mit dem Namen ${one}. Das lässt sich nicht rückgängig machen.`,
    do: "Zusammenlegen",
  },
  remove: {
    open: "Diese Karte löschen",
    ask: (name, plans) =>
      plans === 0
        ? `Die Karte von ${name} wird mit Notizen und Allergien endgültig gelöscht.`
        : `Die Karte von ${name} wird mit Notizen und Allergien endgültig gelöscht. ${t.count(plans, {
            one: "Ihr # Plan bleibt bei den Plänen, auf keiner Karte.",
            other: "Ihre # Pläne bleiben bei den Plänen, auf keiner Karte.",
          })}`,
    do: "Endgültig löschen",
  },
  rights: {
    title: "Was von diesem Gast gesichert ist",
    saveFile: "Alles von diesem Gast sichern",
    savePage: "Als Seite zum Lesen sichern",
    holds:
      "Beide enthalten die Gesundheitsangaben und sind nicht verschlossen. Die Datei öffnet Partline wieder, die Seite ist zum Lesen. Ein laufender Service am Stuhl ist in keiner von beiden.",
    erase: "Diesen Gast endgültig löschen",
    ask: (name, plans) =>
      plans === 0
        ? `Die Karte von ${name} wird mit Notizen und Allergien endgültig gelöscht.`
        : `Die Karte von ${name} wird mit Notizen und Allergien endgültig gelöscht, dazu ${t.count(plans, {
            one: "ihr # Plan mit allem, was gefragt, getan und gesehen wurde, auch im Papierkorb.",
            other: "ihre # Pläne mit allem, was gefragt, getan und gesehen wurde, auch im Papierkorb.",
          })}`,
    stays:
      "Techniken bleiben, auch was aus Schalen gelernt wurde, ohne Namen. Früher gesicherte Dateien, Blätter und Datensicherungen werden nicht erreicht: selbst löschen. Das lässt sich nicht rückgängig machen.",
    do: "Endgültig löschen",
    openFile: "Datei eines Gastes öffnen…",
    file: "Datei eines Gastes",
    log: {
      title: "Gesicherte und gelöschte Gäste",
      none: "Noch keine.",
      line: ({ what, on, plans }) =>
        `${t.date(on)}: ein Gast ${what === "exported" ? "gesichert" : "gelöscht"}, ${t.count(plans, { one: "# Plan", other: "# Pläne" })}`,
    },
  },
  retention: {
    title: "Wie lange Karten bleiben",
    years: "Nach Gästen fragen, die nicht da waren seit",
    never: "Nie fragen",
    choice: (years) => t.count(years, { one: "# Jahr", other: "# Jahren" }),
    how: "Von selbst wird nichts gelöscht.",
    due: (count, years) =>
      `${t.count(count, { one: "# Gast", other: "# Gäste" })} seit ${t.count(years, { one: "# Jahr", other: "# Jahren" })} oder länger nicht da`,
    line: (since) => `letzter Plan oder letzte Änderung ${t.date(since)}`,
    stay: "Behalten",
    stayNamed: (name) => `${name} behalten`,
  },
  page: {
    about: (day) => `Alles, was von diesem Gast gesichert ist, vom ${t.date(day)}`,
    card: "Karte",
    noneSaid: "nicht gefragt",
    visit: (day, plan) => `${t.date(day)}: ${plan}`,
    earlier: (day) => `Gemacht am ${t.date(day)}`,
    done: "Gemacht",
    planned: "Geplant",
    foil: ({ number, coats, minutesOn, level }) =>
      [
        `Folie ${t.whole(number)}`,
        ...(coats.length === 0 ? [] : [`Mischung ${coatLetters(coats)}`]),
        ...(minutesOn === null ? [] : [t.minutes(Math.round(minutesOn))]),
        ...(level === null ? [] : [`Tonhöhe ${t.number(level)}`]),
      ].join(", "),
    unread: "Ein Plan, der nicht lesbar ist",
    unreadHow: "Er steht in der Datei, wie er geschrieben wurde.",
    rest: "Die Zeichnung und alle Zahlen stehen in der Datei.",
  },
  here: {
    title: "Karte",
    none: "Dieser Plan liegt auf keiner Karte.",
    choose: "Karte wählen…",
    show: "Karte zeigen",
  },
  last: {
    title: (day) => `Letzter Besuch, ${t.date(day)}`,
    reactions: "Was schiefging",
    alarm: (what) => what,
    burning: (foil, piece) => `${t.capital(pieces(t).names([foil], piece))}: die Kopfhaut brannte`,
    "stretch-stop": (foil, piece) =>
      `${t.capital(pieces(t).names([foil], piece))}: das Haar dehnte sich zu weit`,
    limp: (foil, piece) => `${t.capital(pieces(t).names([foil], piece))}: das Haar war schlaff`,
    formula: "Rezeptur",
    bowl: ({ mix, product, volume, lightenerG, developerG }) =>
      `Mischung ${mix}: ${product} ${t.grams(lightenerG)} + ${t.number(volume)} vol ${t.grams(developerG)}`,
    toner: ({ product, minutes }) =>
      minutes === null ? product : `${product}, ${t.minutes(Math.round(minutes))}`,
    foils: "Folien",
    foil: "Folie",
    mix: "Mischung",
    minutesOn: "Minuten auf dem Haar",
    level: "Gesehene Tonhöhe",
    unknown: "unbekannt",
    note: "Notizen",
  },
  regrowth: {
    title: "Nachwuchs",
    grown: ({ growth, weeks }) =>
      `${t.spread(t.whole(growth.lowMm), t.mm(growth.highMm))} gewachsen in ${t.count(Math.round(weeks), { one: "# Woche", other: "# Wochen" })}, geschätzt`,
    measured: "Nachwuchs gemessen",
    unit: "mm",
    why: "Wenn möglich messen: Haar kann langsamer wachsen als geschätzt. Produkt auf aufgehelltes Haar wird nirgends vorgeschlagen.",
    counts: (counts) =>
      `${t.whole(counts.due)} fällig, ${t.whole(counts.soft)} weich, ${t.whole(counts["too-early"])} zu früh`,
    states: { due: "fällig", soft: "weich, lassen", "too-early": "zu früh" },
    begins: ({ lowMm, highMm }) => `aufgehellt ab ${t.spread(t.whole(lowMm), t.mm(highMm))} von der Kopfhaut`,
    foil: (foil, piece) => t.capital(pieces(t).names([foil], piece)),
    actions: {
      root: "Nur der Ansatz",
      behind: "Halber Abstand dahinter",
      before: "Halber Abstand davor",
      keep: "Wie damals",
      skip: "Auslassen",
    },
    /** What the picture of a strand shows. */
    key: "Rote Linie: kein Produkt darüber hinaus. Schraffiert: früher blondiert. Breit: Produkt dieses Plans.",
    picture: ({ coat, begins }) =>
      `Eine Strähne: ${coat ? `Produkt von ${t.whole(coat.fromMm)} bis ${t.mm(coat.toMm)}` : "kein Produkt"}; blondiert ab ${t.spread(t.whole(begins.lowMm), t.mm(begins.highMm))} von der Kopfhaut.`,
    propose: "Nur der Ansatz, wo fällig; den Rest auslassen",
    twice: ({ foil, piece, on, fromMm, toMm }) =>
      `${pieces(t).names([foil], piece)} käme auf Haar, das am ${t.date(on)} aufgehellt wurde, ${t.whole(fromMm)} bis ${t.mm(toMm)} von der Kopfhaut.`,
  },
})
