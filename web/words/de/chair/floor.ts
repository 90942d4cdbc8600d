import type { floor as english } from "../../en/chair/floor"
import { pieces } from "../common/pieces"
import { buttons } from "./buttons"
import { foilsWords } from "./calls"

/** The service while it goes on: what is next, what is on, and what is done with each foil. */
export const floor: typeof english = (t) => ({
  next: "Nächste",
  nextFoil: (piece) => (piece === "panel" ? "Nächste Partie" : "Nächste Folie"),
  allOn: (piece) =>
    ({
      foil: "Alle Folien liegen.",
      panel: "Alle Malpartien liegen.",
      both: "Alle Folien und Malpartien liegen.",
    })[piece],
  what: ({ kind, place, foils }) =>
    foils === 1 ? `${t.capital(kind)}, ${place}` : `${t.capital(kind)} in ${t.whole(foils)} Folien, ${place}`,
  mix: (letter) => `Mischung ${letter}`,
  now: "Jetzt",
  atMinute: (min) => `In Minute ${t.whole(min)}`,
  isOn: (foil, piece) => `${t.capital(pieces(t).names([foil], piece))} liegt`,
  by: (who) => `von: ${who}`,
  colourist: "Fachkraft",
  assistant: "Assistenz",
  whoTaps: "Wer tippt",
  wentOnEarlier: buttons.wentOnEarlier,
  lane: (who) => t.capital(who),
  laneDone: "Auf dieser Seite liegen alle.",
  otherFoil: (piece) =>
    ({ foil: "Andere Folie zuerst", panel: "Andere Partie zuerst", both: "Andere zuerst" })[piece],

  onNow: "Liegen jetzt",
  foilsOn: (piece) =>
    ({
      foil: "Folien, die liegen",
      panel: "Malpartien, die liegen",
      both: "Folien und Malpartien, die liegen",
    })[piece],
  noneOn: (piece) =>
    ({ foil: "Keine Folie liegt.", panel: "Keine Malpartie liegt.", both: "Nichts liegt." })[piece],
  foil: (piece) => t.capital(pieces(t).word(1, piece)),
  foilName: (foil, piece) => t.capital(pieces(t).names([foil], piece)),
  foilNames: (foils, piece) => foilsWords(t, foils, piece),
  minutes: "min",
  offIn: (ms) => `Abnahme geplant in ${t.clock(ms)}`,
  offOver: (ms) => `Abnahme geplant vor ${t.clock(ms)}`,
  offStop: "jetzt abnehmen",
  rootsToCome: "Ansatz folgt",
  rootsOn: "Ansatz ist drauf",
  rootsWentOnEarlier: "Ansatz kam schon früher",
  offNow: (limitMin) => `max. ${t.whole(limitMin)}: jetzt abnehmen`,
  countedFromEarliest: "ab frühestens gezählt",

  tapFoil: (piece) =>
    ({
      foil: "Folie antippen: kontrolliert, ab, nachgetragen.",
      panel: "Malpartie antippen: kontrolliert, ab, nachgetragen.",
      both: "Folie oder Malpartie antippen: kontrolliert, ab, nachgetragen.",
    })[piece],
  burning: "Brennt",
  checked: "Kontrolliert",
  off: buttons.off,
  reCoated: "Nachgetragen",

  mixNow: (mix) => `Mischung ${mix} jetzt mischen`,
  bowlFor: ({ bowl, of }) => `Schale ${bowl} von ${of}, für Minute`,
  rinseNow: buttons.rinseNow,
  allOfThem: (count) => t.count(count, { one: "die #, die liegt", other: "alle #, die liegen" }),
  notReady: (foils, piece) =>
    `${foilsWords(t, foils, piece)}: geplante Zeit noch nicht erreicht. Trotzdem ausspülen?`,
  rinseAll: "Alle ausspülen",
  notYet: "Noch nicht",
  end: "Behandlung beenden",
  tonerOn: buttons.tonerOn,
  tonerChecked: "Kontrolliert",
  tonerOff: buttons.tonerOff,
  tonerPlan: ({ product, minutes }) =>
    product === null ? `${t.minutes(minutes)}; Toner wählen` : `${product}, ${t.minutes(minutes)}`,
  tonerTime: ({ onMs, plannedMin }) => `${t.clock(onMs)} von ${t.minutes(plannedMin)}`,
  tonerDone: "ausgespült",
  skipToners: "Ohne Toner",
  after: "Nach dem Ausspülen",
  heatOn: buttons.heatOn,
  heatFor: (minutes) => `${t.minutes(minutes)}, dann kontrollieren`,
  heatOff: "Wärme aus",
  thenCheck: "dann kontrollieren, abkühlen",

  outlook: ({ lastOnMin, rinseMin }, piece) =>
    `Beim jetzigen Tempo: ${{ foil: "letzte Folie", panel: "letzte Malpartie", both: "letzte" }[piece]} gelegt in Minute ${t.whole(lastOnMin)}, alle ab in Minute ${t.whole(rinseMin)}.`,

  again: "Weitere Behandlung mit diesem Plan starten",
  weigh: {
    title: "Reste wiegen",
    bowl: ({ bowl, mix }) => `Schale ${bowl}, Mischung ${mix}`,
    made: ({ lightenerG, developerG }) => `gemischt ${t.gramsNumber(lightenerG)} + ${t.grams(developerG)}`,
    left: "Rest",
    used: (grams) => `${t.grams(grams)} verbraucht`,
  },
  nextVisit: {
    title: "Nächster Termin",
    plan: "Nächsten Termin planen",
    when: ({ from, to }) => `Zwischen dem ${t.date(from)} und dem ${t.date(to)}.`,
    test: (day) => `Hauttest auftragen bis ${t.date(day)}.`,
  },

  check: {
    seen: (name) => `${name}: was Sie gesehen haben`,
    level: (name) => `${name}: gesehene Tonhöhe`,
    darker: "Halbe Stufe dunkler",
    lighter: "Halbe Stufe heller",
    stretch: "Dehnung",
    stretches: { ok: "OK", soft: "Schlaff", stop: "Stopp" },
    scalp: "Kopfhaut",
    comforts: { ok: "OK", warm: "Warm", burning: "Brennt" },
    product: "Produkt",
    moist: "Feucht",
    dry: "Trocken",
    save: "Kontrolle sichern",
    notNow: "Nicht jetzt",
  },
})
