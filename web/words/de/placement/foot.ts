import type { WornParting } from "../../../../geometry/parting/wornParting"
import type { foot as english } from "../../en/placement/foot"
import { pieces } from "../common/pieces"

/** What the figures at the foot of the map say. A figure stands before its words. */
export const foot: typeof english = (t, { kinds, clientSide, landmark }) => {
  const worn: Record<WornParting["kind"] | "unknown", string> = {
    centre: "mit Mittelscheitel",
    side: "mit Seitenscheitel",
    zigzag: "mit Zickzackscheitel",
    none: "zurückgekämmt",
    unknown: "Mittelscheitel angenommen (keiner gesetzt)",
  }
  return {
    empty: "Noch nichts gezeichnet. Hier stehen dann Haare, Auftragsfläche und Gramm.",
    totals: "Summen",
    inHand: ({ kind, number }) =>
      number === null ? t.capital(kinds[kind]) : `${t.capital(kinds[kind])} ${t.whole(number)}`,
    depth: (mm) => `× ${t.mm(mm, 1)}`,
    behindHairline: (at) => `hinter der Haarlinie, ${landmark(at)}`,
    scalp: "Kopfhaut",
    hairs: "Haare",
    hairToCoat: "Auftragsfläche",
    product: (range) => `Produkt, ${range}`,
    foils: (foils, piece) => pieces(t).count(foils, piece),
    sections: (sections) => t.count(sections, { one: "# Partie", other: "# Partien" }),
    more: "mehr",
    estimates: "Schätzwerte. Schalen sind nach dem oberen Wert geplant.",
    estimatesLess: (less) => `${less}. Schalen sind nach dem oberen Wert geplant.`,
    firstToLast: "von der ersten gelegten bis zur letzten abgenommenen Folie",
    minuteByMinute: "Minute für Minute",
    showHairDown: "Haar offen zeigen",
    backToDrawing: "Zurück zur Zeichnung",

    fall: {
      label: "Haar offen",
      title: "Zeigt, wo aufgehellt wird, nicht die Farbe",
      calculating: "Wird berechnet…",
      side: (side) => t.capital(clientSide[side]),
      range: (low, high) => `(${t.percent(low)} bis ${t.percent(high)})`,
      told: ({ withinCm, heads, kind }) =>
        `des von vorn sichtbaren Haars, bis ${t.cm(withinCm)} vom Gesicht, sind aufgehellt. ` +
        `Spanne: ${t.count(heads, { one: "# simulierter Kopf", other: "# simulierte Köpfe" })}. ` +
        `Trocken und glatt gezeichnet, ${worn[kind]}. Eine Skizze, keine Farbe.`,
    },

    minutes: {
      label: "Die Karte Minute für Minute",
      slider: "Minute auf der Karte",
      listLabel: (atMin) => `Folien in Minute ${t.whole(atMin)}`,
      foil: ({ number, piece, state, onMin }) => {
        const called = t.capital(pieces(t).names([number], piece))
        if (state === "waiting") return `${called}: liegt noch nicht`
        return state === "on"
          ? `${called}: liegt seit ${t.minutes(onMin)}`
          : `${called}: ab, nach ${t.minutes(onMin)}`
      },
      keyLabel: "Was die Töne zeigen: Minuten im Haar, kein Ergebnis",
      keys: {
        waiting: "liegt noch nicht",
        justOn: "gerade gelegt",
        half: "halbe Höchstzeit",
        all: "ganze Höchstzeit",
        off: "ab",
      },
    },
  }
}
