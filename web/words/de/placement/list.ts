import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { TakenTwiceCode } from "../../../core/figures/takenTwice"
import type { PlaceCode } from "../../../core/placement/places"
import type { list as english } from "../../en/placement/list"
import { say } from "../../say"
import { inDative } from "../common/declined"
import { pieces } from "../common/pieces"

/** The foils in the order they are applied, and the totals of them. */
export const list: typeof english = (t, { kinds, place, sectionName, onSide, zones }) => {
  const ordinal = (n: number) => t.ordinal(n, { other: "#." })
  const count = (sections: number) => t.count(sections, { one: "# Partie", other: "# Partien" })
  const named = (code: SectionNameCode) => say<SectionNameCode>(sectionName, code)
  return {
    panel: "Folien",
    title: (foils, piece) => (foils === 0 ? "Folien" : pieces(t).count(foils, piece)),
    inOrder: "in der Reihenfolge des Legens",
    label: "Folien in der Reihenfolge des Legens",
    empty:
      "Noch keine Folien. „Slice“ wählen und an der Haarlinie entlangziehen, eine Technik wählen oder eine Folie eintippen.",
    ordinal,
    dragHint: "Ziehen, um früher oder später zu legen",
    whatAndWhere: ({ kind, at, rank }) => {
      const what = `${t.capital(kinds[kind])}, ${say<PlaceCode>(place, at)}`
      return rank === null ? what : `${what}, ${ordinal(rank)}`
    },
    leftOut: ({ name, at, rank }) => {
      const what = `${name || t.capital(kinds["left-out"])}, ${say<PlaceCode>(place, at)}`
      return rank === null ? what : `${what}, ${ordinal(rank)}`
    },
    mix: (mix) => `Mischung ${mix}`,
    noProduct: "kein Produkt",
    lengthAndDepth: ({ lengthMm, startMm, endMm }) =>
      startMm === endMm
        ? `${t.mm(lengthMm)} × ${t.mm(startMm, 1)}`
        : `${t.mm(lengthMm)} × ${t.number(startMm, 1)}–${t.mm(endMm, 1)}`,
    pair: ({ other, side }) =>
      side === "centre" ? `Paar mit ${inDative(t, other)}` : `Paar mit ${inDative(t, other)} ${onSide[side]}`,
    selectSeveral: "Mehrere wählen",
    all: "Alle",
    copy: "Kopieren",
    paste: (sections) => `${t.whole(sections)} einfügen`,
    numberInOrder: "So nummerieren",
    selected: (sections) => `${count(sections)} gewählt`,
    copied: (sections) => `${count(sections)} kopiert`,
    copyRefused: "Private Fenster sichern nichts, und Kopieren braucht den Speicher des Browsers.",
    pasteUnreadable: "Das Kopierte ist nicht lesbar. Partien noch einmal kopieren.",
    pasteNothing: "Erst etwas kopieren.",
    dragCancelled: "Bleibt, wo es war",

    overlaps: {
      title: "Überlappende Folien",
      told: ({ earlier, later, areaCm2 }) => {
        const [what, from] = [t.capital(named(later)), inDative(t, earlier)]
        if (later.code === "left-out") return `${what} liegt auf ${t.area(areaCm2)} vom Haar von ${from}.`
        return earlier.code === "left-out"
          ? `${what} nimmt ${t.area(areaCm2)} von ausgelassenem Haar: ${named(earlier)}.`
          : `${what} nimmt ${t.area(areaCm2)} vom Haar von ${from}.`
      },
      reduce: (section) => `${t.capital(named(section))} verkleinern`,
      takenTwice,
      inTotals: (code) => `In den Summen ${takenTwice(code)}.`,
    },

    notes: {
      title: "Noch einmal ansehen",
      told: (told) => {
        const name = t.capital(named(told.section))
        if (told.code === "bare-coat")
          return told.part === "ends"
            ? `${name}: Die Mischung am Ansatz würde bis ${t.mm(told.toMm)} reichen, bei ${t.cm(told.lengthCm)} Haarlänge. Mischung ${told.mix} bestreicht nichts.`
            : `${name}: Das Produkt beginnt ${t.mm(told.startMm)} von der Kopfhaut, der Ansatz endet bei ${t.mm(told.toMm)}. Mischung ${told.mix} bestreicht nichts.`
        return told.code === "deep-slice"
          ? `${name} ist ${t.mm(told.depthMm)} tief: Über ${t.mm(told.mostMm)} bleibt ein geschlossener Slice innen dunkler.`
          : `${name}: Das Produkt würde ${t.mm(told.startMm)} von der Kopfhaut beginnen und davor enden, bei ${t.cm(told.lengthCm)} Haarlänge. Nichts wird bestrichen.`
      },
      cure: (code) =>
        ({
          "deep-slice": "Dünner machen",
          bare: "Näher beginnen, nur so weit wie nötig",
          "bare-coat": "Mit einer Mischung bestreichen",
        })[code],
    },

    totals: {
      title: "Summen nach Zone",
      zone: "Zone",
      foils: "Folien",
      hairs: "Haare",
      hairToCoat: "Auftragsfläche",
      product: "Produkt",
      zones: {
        top: t.capital(zones.top),
        left: t.capital(zones.left),
        right: t.capital(zones.right),
        back: t.capital(zones.back),
      },
      all: "Gesamt",
    },
  }

  function takenTwice({ lowG, highG, pairs, more }: TakenTwiceCode) {
    const pairNames = pairs.map((pair) => t.and(pair.map(nameOf)))
    const others = more > 0 ? [t.count(more, { one: "# weiteres Paar", other: "# weitere Paare" })] : []
    return `${t.gramsRange({ low: lowG, mid: lowG, high: highG })} weniger: Haar doppelt genommen, bei ${[...pairNames, ...others].join("; ")}`
  }

  function nameOf(code: SectionNameCode) {
    return "number" in code ? t.whole(code.number) : named(code)
  }
}
