import type { Plan } from "../../../core/document/schema"
import type { map as english } from "../../en/sheets/map"
import type { Names } from "../../en/sheets/names"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

type SheetMap = ReturnType<typeof english>

/** The placement and formula map. */
export const map: typeof english = (t, common) => ({
  about: "Platzierung und Rezeptur",
  aboutMirror: "Platzierung und Rezeptur, vorn wie im Spiegel",
  /** The usual parting and the crown swirl, where either is known. */
  worn,
  alerts: {
    stop: "NICHT FREIGEGEBEN: NICHT MISCHEN",
    notAsked: "NICHT FREIGEGEBEN: Gesundheit nicht erfragt",
  },
  tests: { strand: "Probesträhne gemacht:", patch: "Hauttest ohne Reaktion am:" },

  bowls: { title: "Schalen, nach dem oberen Wert", doneTitle: "Schalen, wie gemischt" },
  toner: { title: "Toner, nach dem Ausspülen" },
  working: {
    title: "Abteilungen, in Reihenfolge",
    row: ({ name, foils, productG, placeMin }) =>
      [
        `${name}: ${common.foils(foils)}`,
        t.gramsRange(productG),
        ...(placeMin ? [`${t.spread(t.whole(placeMin.low), t.whole(placeMin.high))} min`] : []),
      ].join("; "),
    noFoils: (names) => `${names.join(", ")}: keine Folien`,
    crossing: (names) => `In zwei Abteilungen: ${t.and(names)}`,
  },
  painted: {
    title: "Gemalte Partien, Maßstab 1 : 10",
    of: ({ widthMm, lengthMm, share }) => `${t.mm(widthMm)} × ${t.mm(lengthMm)}, ${t.percent(share)} bemalt`,
    key: "Vom Rand: weich, mittel, satt.",
  },
  ruler: {
    title: "Tiefen, Originalgröße",
    check: ["50 mm lang; wenn nicht,", "in voller Größe drucken"],
    depth: (mm) => t.mm(mm, 1),
    foils: common.foils,
    foilCount: common.foilCount,
    starts: "Beginn des Produkts, Originalgröße",
    /** Where lightened hair may begin, off the scalp. */
    notPast: ({ low, high }) =>
      `blondiert ab ${t.spread(t.whole(low), t.mm(high))}: kein Produkt hinter der Linie`,
    stitches: "Stich/Abstand, mm, Originalgröße",
    stitch: ({ stitchMm, gapMm, dipMm }) => `${half(t, stitchMm)}/${half(t, gapMm)}, Tiefe ${half(t, dipMm)}`,
    scale: "50 mm auf dem Kopf, in jeder Ansicht",
  },
  table: table(t, common),
  clock: clock(t),
})

/** Halves are kept, since a slice is one to three millimetres deep. */
const half = (t: Tools, mm: number) => t.number(Math.round(mm * 2) / 2, 1)

const table = (t: Tools, common: Names): SheetMap["table"] => ({
  heads: {
    order: ["Folge"],
    number: ["Nr."],
    side: ["Seite"],
    kind: ["Art"],
    foils: ["Folien"],
    lengthMm: ["Länge", "mm"],
    depthMm: ["Tiefe", "mm"],
    direction: ["Scheitel"],
    start: ["Start", "mm"],
    hairG: ["Haar", "g"],
    lowG: ["min."],
    midG: ["ca."],
    highG: ["max."],
    mix: ["Misch."],
    on: ["Auf"],
    off: ["Ab"],
  },
  product: "Produkt, g",
  sides: { left: "links", right: "rechts", centre: "Mitte" },
  kinds: { slice: "Slice", weave: "Weaving", backcomb: "Toupage", painted: "Gemalt" },
  half: (mm) => half(t, mm),
  direction: (direction) => {
    const { name, degrees } = direction
    if (name === "parallel to hairline") return "parallel"
    if (name === "diagonal forward") return `nach vorn ${t.whole(degrees)}°`
    return name === "diagonal back" ? `nach hinten ${t.whole(degrees)}°` : common.direction(direction)
  },
  start: (startMm, { from, to }) => {
    const start = from > 0 ? t.percent(from) : half(t, startMm)
    return to < 1 ? `${start} bis ${t.percent(to)}` : start
  },
  carriers: { board: "Board", "open-air": "offen", film: "abgedeckt" },
  leftOut: (name) => (name ? `Ausgelassen: ${name}` : "Ausgelassen"),
  total: ({ foils, piece, areaCm2, hairs }) =>
    `${pieces(t).count(foils, piece)}, ${t.area(areaCm2)} Kopfhaut, ${t.spread(t.hairs(hairs.low), t.hairs(hairs.high))} Haare`,
  takenTwice: (less) => `${less}; auf der Karte kreuzschraffiert.`,
  arrows:
    "Produkt geht vom Start (mm ab Kopfhaut) bis in die Spitzen, wenn die Zeile nichts anderes sagt. Pfeile: auf der Karte die Folienlage, hier das Gefälle des Scheitels, wie diese Seite zu sehen ist.",
})

const clock = (t: Tools): SheetMap["clock"] => ({
  title: "Uhr, Minuten ab dem ersten Scheitel",
  heads: { number: "Nr.", on: "Auf", ready: "Fertig", off: "Ab bis" },
  key: "Balken: Zeit im Haar, schraffiert wie die Mischung. Weiß: kann fertig sein. Dicker Strich: Höchstzeit. Gepunktet: eine Kontrolle. Dreieck: diese Schale mischen. Geplant, nicht versprochen: kontrollieren und abnehmen, was fertig ist.",
  rest: ({ who, fromMin, toMin }) => `${resting[who]} von Minute ${t.whole(fromMin)} bis ${t.whole(toMin)}.`,
  heat: ({ fromMin, toMin }) =>
    `Wärme von Minute ${t.whole(fromMin)} bis ${t.whole(toMin)}: dann aus, kontrollieren, abkühlen.`,
  readyOpen: (low) => `${t.whole(low)}–?`,
})

const resting = { all: "Pause", colourist: "Fachkraft in Pause", assistant: "Assistenz in Pause" }

const worn = ({ wornParting, whorl }: Pick<Plan["head"], "wornParting" | "whorl">) =>
  [
    ...(wornParting
      ? [wornParting.kind === "side" ? sides[wornParting.side] : partings[wornParting.kind]]
      : []),
    ...(whorl ? [whorls[whorl.turns]] : []),
  ].join(", ")

const partings = {
  centre: "Scheitel in der Mitte",
  zigzag: "Zickzackscheitel",
  none: "kein üblicher Scheitel",
}
const sides = { left: "Scheitel links", right: "Scheitel rechts" }
const whorls = {
  clockwise: "Haarwirbel im Uhrzeigersinn",
  anticlockwise: "Haarwirbel gegen den Uhrzeigersinn",
  none: "kein Haarwirbel",
}
