import type { cards as english } from "../../en/sheets/cards"

/** The sheet to take home, and the salon's record card. */
export const cards: typeof english = (t) => ({
  takeHome: {
    about: "Zum Mitnehmen",
    done: "Was gemacht wurde",
    planned: "Was geplant ist",
    picture: "Das Bild zeigt, wo, nicht die Farbe.",
    mirror: "Wie Sie sich im Spiegel sehen",
    skin: "Haut und Kopfhaut heute und drei Tage lang beobachten",
    signs: {
      irritation:
        "Jucken, Rötung oder Ausschlag: mit viel lauwarmem Wasser 20 Minuten ausspülen, nichts anderes auftragen und uns anrufen. Nach einem Tag nicht besser: in Apotheke oder Arztpraxis fragen.",
      burn: "Blasen, nässende Haut oder anhaltender Schmerz: noch am selben Tag in eine Arztpraxis. Verbrennungen können sich später zeigen.",
      breathing: "Atemnot oder Schwellung von Gesicht, Lippen, Zunge oder Hals:",
      "take-along": "Dieses Blatt mitnehmen: Es nennt die Produkte und das Datum.",
    },
    breathing: (number) =>
      `Atemnot oder Schwellung von Gesicht, Lippen, Zunge oder Hals: eigenen Adrenalin-Pen anwenden, sofort ${number || "Ihre Notrufnummer (_________)"} anrufen, hinlegen; bei Atemnot sitzen.`,
    care: "Pflege zu Hause",
    careWhen: {
      "first-days": "Erste zwei Tage",
      "every-wash": "Jede Wäsche",
      weekly: "Wöchentlich",
      heat: "Hitze",
      "sun-and-pool": "Sonne und Pool",
    },
    careText: {
      "first-days": "Nicht waschen, keine engen Bänder oder Klammern.",
      "every-wash":
        "Lauwarmes Wasser, mildes Shampoo, Conditioner auf die aufgehellten Längen. Von den Spitzen aufwärts entwirren.",
      weekly:
        "Wirkt das aufgehellte Haar zu warm: ein tönender Conditioner nach seiner Anleitung. Dann eine Maske.",
      heat: "Hitzeschutz nach Etikett verwenden. Heiße Geräte nur auf trockenem Haar, auf der niedrigsten Stufe, die wirkt.",
      "sun-and-pool":
        "Vor dem Schwimmen das Haar nass machen und Conditioner einarbeiten; danach gut ausspülen. Bei starker Sonne ein Hut.",
    },
    back: "Wann wiederkommen",
    toner: "Toner",
    frame: "Gesichtsrahmen",
    days: (from, to) => t.days(from, to),
    regrowth: (from, to) => `${t.days(from, to)} (nur auf den Nachwuchs)`,
    test: "Hauttest",
    testBy: (hours, day) =>
      `Vor jedem Toner oder jeder Farbe, wie der Hersteller es vorgibt, mindestens ${t.whole(hours)} Stunden vorher: für den frühesten Termin bis ${t.date(day)}.`,
    questions: "Fragen?",
    ask: (salon, phone) => [salon || "Salon ______________", phone || "Telefon ______________"].join(", "),
    mind: "Beachten",
    defers:
      "Die Angaben auf jedem Produkt befolgen; sie, örtliches Recht und Zulassungsregeln gehen diesem Blatt vor. Bitte aufbewahren.",
  },

  record: {
    about: "Karteikarte",
    private:
      "Vertraulich: enthält Gesundheitsangaben. So aufbewahren, dass nur befugtes Personal es lesen kann.",
    hair: "Haar und Wünsche",
    planned: "Was geplant ist",
    mixed: "Gemischt",
    weighed: "Schalenrest",
    weigh: (bowls) =>
      bowls.map(({ name, leftG }) => `${name} ${leftG === null ? "________" : t.number(leftG)} g`).join(", "),
    toner: "Toner",
    mix: (letter) => `Mischung ${letter}`,
    times: "Geplant und tatsächlich, Minuten ab dem ersten Scheitel",
    heads: {
      number: "Nr.",
      foil: "Folie",
      mix: "Misch.",
      on: "Auf",
      off: "Ab",
      planned: "Plan",
      actual: "Ist",
      checks: "Einwirkzeit und Kontrollen",
    },
    alarms: "Was schiefging",
    takenBack: (what) => `${what} (rückgängig)`,
    next: "Nächstes Mal",
    defers:
      "Eine Rezeptur ist keine Nachbestellung: Bei jedem Termin gehen eine neue Beratung, Tests und die Herstellerangaben vor, dann örtliches Recht und Zulassungsregeln.",
  },
})
