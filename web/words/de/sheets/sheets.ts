import type { sheets as english } from "../../en/sheets/sheets"
import type { Tools } from "../../tools"
import { cards } from "./cards"
import { handout } from "./handout"
import { lesson } from "./lesson"
import { map } from "./map"
import { views } from "./views"

type Sheets = ReturnType<typeof english>

/** Paper, and the screen it is chosen on. */
export const sheets: typeof english = (t, common) => ({
  done: {
    lesson: "Text des Technikblatts ändern",
    "lesson-as-drawn": "Technikblatt: zurück zum Plan",
  },
  screen: screen(t),

  names: {
    placement: "Platzierungskarte",
    technique: "Technikblatt",
    "take-home": "Zum Mitnehmen",
    record: "Karteikarte",
  },
  asides: {
    placement:
      "Die Karte hängt am Spiegel, wo andere sie lesen können, darum zeigt sie nur Initialen. Mit 100 % drucken (nicht „an Seite anpassen“), damit das Lineal in Originalgröße ist.",
    technique:
      "Für Azubis: was gezeichnet ist, Schritt für Schritt, mit einem Kopf zum Zeichnen, Fehlern, einer Selbstprüfung und dem Feld für die Prüfung. Ohne Gast, Datum und Notizen.",
    "take-home":
      "Für den Gast, in großer Schrift: was gemacht wurde, Haut und Kopfhaut, Pflege zu Hause, wann wiederkommen. Keine Rezeptur, keine Gesundheitsangaben.",
    record:
      "Für den Salon: das Haar, was gefragt wurde, die Mischungen, geplante und tatsächliche Zeiten, Kontrollen und die Notizen fürs nächste Mal. Enthält Gesundheitsangaben.",
  },

  heading: {
    unnamed: "Plan ohne Namen",
    client: (initials) => `Gast ${initials}`,
    page: (number, count) => `Seite ${t.whole(number)} von ${t.whole(count)}`,
    datedPage: (day, number, count) => `${t.date(day)}, Seite ${t.whole(number)} von ${t.whole(count)}`,
  },

  cautions,
  map: map(t, common),
  views: views(),
  cards: cards(t),
  handout: handout(),
  lesson: lesson(t),
  pictures: {
    view: (view, foils) =>
      foils.length === 0
        ? `Zeichnung des Kopfs: ${view}.`
        : `Zeichnung des Kopfs: ${view}. Darauf: ${common.foils(foils)}.`,
    clock: "Balken der Uhr; dieselben Minuten stehen daneben in Zahlen.",
    comb: "Ein Lineal in Originalgröße.",
    stitches: "Stiche in Originalgröße.",
  },
})

const screen = (t: Tools): Sheets["screen"] => ({
  title: "Blätter",
  sheet: "Blatt",
  paper: "Papier",
  papers: { a4: "A4", letter: "Letter" },
  language: "Sprache des Blatts",
  change: "Ändern",
  front: "Vorderansicht",
  fronts: { facing: "Wie Sie vor dem Gast stehen", mirror: "Wie im Spiegel" },
  save: "PDF sichern",
  print: "Drucken…",
  share: "Teilen…",
  readAsPage: "Als Seite lesen",
  readHint:
    "Eine Seite für Browser oder Telefon, ohne Skript: Text, der sich vergrößern oder vorlesen lässt.",
  cancel: "Abbrechen",
  saved: (file) => `${file} gesichert`,
  pages: "Seiten",
  page: (number) => `Seite ${t.whole(number)}`,
  pageOf: (number, count) => `Seite ${t.whole(number)} von ${t.whole(count)}`,
  asPrinted: "Seite wie gedruckt",
  working: "Seiten werden gesetzt…",
  workingOn: (done, count) => `Schritt ${t.whole(done)} von ${t.whole(count)} wird gesetzt…`,
  printing: (done: number, count: number) => `Seite ${t.whole(done)} von ${t.whole(count)} wird gedruckt…`,
  stopped: "Die Seiten wurden nicht gesetzt.",
  again: "Seiten setzen",
  noFont: "Die Schrift für die Blätter wurde nicht geladen. Die Verbindung prüfen und neu laden.",
  noWords: "Die Sprache des Blatts wurde nicht geladen. Die Verbindung prüfen und sie noch einmal wählen.",
  noPdf: "Das PDF konnte nicht erstellt werden. Die Seite neu laden und noch einmal versuchen.",
})

const cautions: Sheets["cautions"] = {
  all: [
    "Herstellerangaben zuerst, dann örtliches Recht und Zulassungsregeln, dann Ihr Urteil. Dieses Blatt plant nur.",
    "Handschuhe an. Von Augen, Wimpern, Brauen fernhalten. Im Auge: sofort ausspülen, 20 Minuten.",
    "Beim Mischen lüften. Die Schale locker abdecken; nie dicht verschließen.",
    "Keine Wärme, außer die Herstellerangaben erlauben sie. Keine Schalen oder Klammern aus Metall.",
    "Keine Flammen, heißen Geräte oder Sprühdosen nahe am Produkt. Benutzte Folien kommen ins Wasser, nicht in den Abfall.",
    "Den Gast bitten, jede Wärme, jedes Kribbeln und jeden Schmerz zu melden.",
    "Folie heiß oder quillt, Stechen oder Brennen: sofort abnehmen und mit viel kühlem Wasser ausspülen.",
    "Alle 5 bis 10 Minuten kontrollieren. Aufhören bei der Zieltonhöhe, der Höchstzeit des Herstellers oder wenn es trocknet, was zuerst kommt.",
    "Haare, Gramm und Minuten sind Schätzwerte: die Spanne lesen.",
  ],
  localRule: "Örtliche Regel:",
  codedLetters:
    "Einige Buchstaben lassen sich hier nicht drucken. Für jeden steht sein Code, zum Beispiel [U+6F22].",
}
