import type { emergencies as english } from "../../en/chair/emergencies"
import { pieces } from "../common/pieces"

/** The red button: short, one thing a line, nothing but what to do. */
export const emergencies: typeof english = (t) => ({
  whatIsWrong: "Was stimmt nicht?",
  somethingElse: "Etwas anderes",
  backToClock: "Zurück zur Uhr",
  number: (number) => `Notruf: ${number}`,
  numberUnknown: "Notruf: nicht gesetzt. In „Ihr Salon“ eintragen.",
  salon: (name, phone) =>
    [...(name ? [`Salon: ${name}`] : []), ...(phone ? [`Telefon des Salons: ${phone}`] : [])].join(". "),
  first:
    "Im Zweifel zuerst den Notruf wählen. Erste-Hilfe-Ausbildung und Herstellerangaben gehen dieser Liste vor.",
  about: (foils, piece) => t.capital(pieces(t).names(foils, piece)),
  done: "Erledigt",
  stepDone: (step) => `Erledigt: ${step}`,
  log: "Zeitprotokoll",
  time: t.time,
  day: t.day,
  logLine: ({ time, clock, what }) => `${time} (Minute ${clock}): ${what}`,
  logDay: ({ day, time, what }) => `${day}, ${time}: ${what}`,
  logStep: ({ what, step }) => `${what}: ${step}`,
  logFoils: ({ what, foils }) => `${what} (${foils})`,

  names: {
    breathing: "Atemnot oder Schwellung von Gesicht oder Hals",
    burning: "Brennen auf Kopfhaut oder Haut",
    eye: "Produkt im Auge",
    wheeze: "Nur pfeifende Atmung oder Husten",
    "hot-foil": "Folie heiß, quillt oder raucht",
    faint: "Ohnmacht",
    fit: "Krampfanfall",
    swallowed: "Verschluckt",
    other: "Etwas anderes",
  },

  steps: {
    breathing: {
      pen: "Jetzt den eigenen Adrenalin-Pen des Gastes anwenden.",
      call: "Notruf wählen. „Anaphylaxie“ sagen.",
      "lie-flat":
        "Flach hinlegen, Beine hoch. Oberkörper nur bei Atemnot erhöht; bei Schwangerschaft auf die linke Seite. Nicht stehen, nicht gehen, auch wenn es besser geht.",
      "second-pen": "Nach 5 Minuten nicht besser: einen zweiten Pen anwenden, wenn vorhanden.",
      air: "Pulver und Schale weg. Fenster auf.",
      "rinse-later": "Sobald die Atmung es zulässt, spült jemand das Produkt aus.",
      stay: "Beim Gast bleiben. Bei diesem Gast nie wieder Blondierung.",
    },
    burning: {
      "foils-off": "Was dort liegt, jetzt abnehmen. Nicht auf die Kontrolle warten.",
      rinse:
        "Mit viel kühlem fließendem Wasser mindestens 20 Minuten spülen. Das Wasser von den Augen fernhalten.",
      "no-ice": "Kein Eis, keine Creme.",
      "no-more": "Heute keine Wärme, kein Toner und nichts anderes auf diese Kopfhaut.",
      doctor:
        "Blasen, verletzte Haut oder anhaltender Schmerz: noch heute in eine Arztpraxis, mit Produktname und Einwirkzeit. Große, tiefe Verbrennungen oder im Gesicht: Notruf wählen.",
    },
    eye: {
      rinse:
        "Sofort unter sanft fließendem lauwarmem Wasser spülen. Lider offen halten; von der Nasenseite nach außen laufen lassen, weg vom anderen Auge.",
      lens: "Kontaktlinse herausnehmen, wenn sie leicht herausgeht; weiterspülen.",
      "keep-rinsing": "Mindestens 20 Minuten weiterspülen. Nicht reiben, keine Tropfen.",
      go: "Notruf wählen oder in die Augen-Notfallambulanz; unterwegs wenn möglich weiterspülen. Die Dose mitnehmen. Der Gast darf nicht selbst fahren.",
    },
    wheeze: {
      "powder-away": "Pulver und Schale wegbringen. Frische Luft hereinlassen.",
      inhaler: "Mit dem eigenen Asthmaspray des Gastes helfen.",
      call: "Nach 5 Minuten nicht besser oder schlimmer: Notruf wählen.",
      "rinse-later": "Wenn die Atmung ruhig ist, Produkt ausspülen und die Behandlung beenden.",
    },
    "hot-foil": {
      "take-off": "Handschuhe an. Nicht über dem Gesicht öffnen. Die Folie abnehmen.",
      "into-water": "Die Folie mit Produkt in viel Wasser werfen, draußen oder weg von Menschen.",
      rinse:
        "Diese Strähne und die Kopfhaut darunter mit viel kühlem Wasser spülen; 20 Minuten, wenn die Haut heiß ist oder schmerzt.",
      "feel-others": "Jede andere Folie aus dieser Schale fühlen. Jede warme abnehmen.",
      flames: "Flammen: Feueralarm, Feuerwehr, hinaus.",
      "no-more": "Heute keine Wärme und nichts mehr von dieser Mischung. Notieren, welche Schale es war.",
    },
    faint: {
      "lie-flat": "Den Gast flach hinlegen, Beine hoch; bei Schwangerschaft auf die linke Seite.",
      "keep-clear": "Produkt von Augen und Mund fernhalten. Den Umhang lockern. Frische Luft.",
      "not-awake": "Nach einer Minute nicht wach: stabile Seitenlage, Notruf wählen.",
      "not-breathing": "Keine normale Atmung: Notruf, mit Herzdruckmassage beginnen, Defibrillator holen.",
      end: "Wach: eine Weile liegen bleiben. Das Produkt ausspülen und die Behandlung beenden.",
    },
    fit: {
      "make-room": "Platz schaffen. Harte Dinge weg; den Kopf polstern.",
      "nothing-in": "Nichts in den Mund. Den Gast nicht festhalten.",
      "time-it": "Die Zeit messen.",
      call: "Über 5 Minuten, zum ersten Mal oder verletzt: Notruf wählen.",
      after: "Danach: stabile Seitenlage. Dableiben. Das Produkt ausspülen.",
    },
    swallowed: {
      "rinse-mouth": "Den Mund mit Wasser ausspülen.",
      "not-sick": "Kein Erbrechen auslösen.",
      call: "Giftnotruf oder Notruf wählen, mit der Dose in der Hand.",
    },
  },
})
