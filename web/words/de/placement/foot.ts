import type { WornParting } from "../../../../geometry/parting/wornParting"
import type { WornFront } from "../../../../geometry/strands/gather"
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
  const fronts: Record<WornFront, string> = {
    cheek: "an der Wange",
    tucked: "hinters Ohr",
    tied: "zurückgebunden",
  }
  const toned = {
    cool: "kühl abgemattet",
    neutral: "neutral abgemattet",
    warm: "warm getönt",
    none: "vor dem Toner",
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
    firstToLast: (piece) =>
      ({
        foil: "von der ersten gelegten bis zur letzten abgenommenen Folie",
        panel: "von der ersten gelegten bis zur letzten abgenommenen Malpartie",
        both: "von der ersten gelegten bis zur letzten abgenommenen",
      })[piece],
    minuteByMinute: "Minute für Minute",
    showHairDown: "Haar offen zeigen",
    backToDrawing: "Zurück zur Zeichnung",

    fall: {
      label: "Haar offen",
      title: "Eine Skizze aus Pigmentwerten",
      calculating: "Wird berechnet…",
      side: (side) => t.capital(clientSide[side]),
      range: (low, high) => `(${t.percent(low)} bis ${t.percent(high)})`,
      told: ({ withinCm, heads, kind, front }) =>
        `des von vorn sichtbaren Haars, bis ${t.cm(withinCm)} vom Gesicht, sind aufgehellt. ` +
        `Spanne: ${t.count(heads, { one: "# simulierter Kopf", other: "# simulierte Köpfe" })}. ` +
        `Trocken und glatt gezeichnet, ${worn[kind]}, vorn ${fronts[front]}, am Tag selbst. Die Farbe zeigt die Probesträhne.`,
      /** What is drawn, and how far its colour may be out. */
      drawn: ({ now, aimed, finish }) =>
        `Gezeichnet von Tonhöhe ${t.number(now)} auf ${t.number(aimed)}, ${toned[finish ?? "none"]}; die Muster reichen von einer Tonhöhe dunkler bis zu einer heller.`,
      nowAssumed: (level) => `Tonhöhe jetzt nicht angegeben: gezeichnet als ${t.number(level)}.`,
      aimedAssumed: (level) => `Ziel-Tonhöhe nicht angegeben: gezeichnet als ${t.number(level)}.`,
      front: "Vorn",
      fronts,
      swatches: "Farbe, als Spanne",
      weeks: "Wochen später",
      weeksOn: ({ weeks, lowMm, highMm }) =>
        weeks === 0
          ? "am Tag selbst"
          : `${t.count(weeks, { one: "# Woche", other: "# Wochen" })}: Ansatz ${t.spread(t.whole(lowMm), t.whole(highMm))} mm nachgewachsen (Spanne)`,
      withToner: "Mit Toner",
      showToClient: "Groß zeigen",
      backToFigures: "Zurück zu den Zahlen",
      clientSentence: "Eine Skizze, wo das Licht liegt. Die Farbe zeigt die Probesträhne.",
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
