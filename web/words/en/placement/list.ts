import type { SectionKind } from "../../../../geometry/section/section"
import type { SectionNote } from "../../../core/checks/sectionNotes"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { TakenTwiceCode } from "../../../core/figures/takenTwice"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { PairCode } from "../../../core/placement/pairCode"
import type { PlaceCode } from "../../../core/placement/places"
import { say } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { pieces } from "../common/pieces"

/** The foils in the order they are applied, and the totals of them. */
export const list = (t: Tools, { kinds, place, sectionName, onSide, zones }: CommonWords) => {
  /** `rank` tells sections of one kind at one place apart, from the hairline back. */
  const whatAndWhere = ({ kind, at, rank }: { kind: SectionKind; at: PlaceCode; rank: number | null }) => {
    const what = `${t.capital(kinds[kind])}, ${say<PlaceCode>(place, at)}`
    return rank === null ? what : `${what}, ${ordinal(rank)}`
  }
  const ordinal = (n: number) => t.ordinal(n, { one: "#st", two: "#nd", few: "#rd", other: "#th" })
  const count = (sections: number) => t.count(sections, { one: "# section", other: "# sections" })
  return {
    panel: "Foils",
    title: (foils: number, piece: Piece) => (foils === 0 ? "Foils" : pieces(t).count(foils, piece)),
    inOrder: "in order of application",
    label: "Foils in order of application",
    empty:
      "No foils yet. Choose “Slice” and drag along the hairline, pick a technique, or add one by typing.",
    /** 1st, 2nd, 3rd: a place in the order of application, never a number on the map. */
    ordinal,
    dragHint: "Drag to apply earlier or later",
    whatAndWhere,
    leftOut: ({ name, at, rank }: { name: string; at: PlaceCode; rank: number | null }) => {
      const what = `${name || t.capital(kinds["left-out"])}, ${say<PlaceCode>(place, at)}`
      return rank === null ? what : `${what}, ${ordinal(rank)}`
    },
    mix: (mix: string) => `mix ${mix}`,
    noProduct: "no product",
    lengthAndDepth: ({ lengthMm, startMm, endMm }: { lengthMm: number; startMm: number; endMm: number }) =>
      startMm === endMm
        ? `${t.mm(lengthMm)} × ${t.mm(startMm, 1)}`
        : `${t.mm(lengthMm)} × ${t.number(startMm, 1)}–${t.mm(endMm, 1)}`,
    /** Which section a section makes a pair with, and on which side that lies. */
    pair: ({ other, side }: PairCode) =>
      side === "centre"
        ? `pair with ${say<SectionNameCode>(sectionName, other)}`
        : `pair with ${say<SectionNameCode>(sectionName, other)} ${onSide[side]}`,
    selectSeveral: "Select several",
    all: "All",
    copy: "Copy",
    paste: (sections: number) => `Paste ${t.whole(sections)}`,
    numberInOrder: "Number in this order",
    selected: (sections: number) => `${count(sections)} selected`,
    copied: (sections: number) => `${count(sections)} copied`,
    copyRefused: "Private windows do not save, and copying needs the browser’s storage.",
    pasteUnreadable: "What was copied cannot be read. Copy the sections again.",
    pasteNothing: "Copy something first.",
    dragCancelled: "Left where it was",

    overlaps: {
      title: "Overlapping foils",
      /** Two sections that take the same hair. */
      told: ({
        earlier,
        later,
        areaCm2,
      }: {
        earlier: SectionNameCode
        later: SectionNameCode
        areaCm2: number
      }) => {
        const [first, second] = [earlier, later].map((code) => say<SectionNameCode>(sectionName, code))
        if (later.code === "left-out")
          return `${t.capital(second)} lies on ${t.area(areaCm2)} of the hair of ${first}.`
        return earlier.code === "left-out"
          ? `${t.capital(second)} takes ${t.area(areaCm2)} of the hair kept out in ${first}.`
          : `${t.capital(second)} takes ${t.area(areaCm2)} of the hair of ${first}.`
      },
      reduce: (section: SectionNameCode) => `Reduce ${say<SectionNameCode>(sectionName, section)}`,
      /** How much less the totals are than the rows together. */
      takenTwice,
      inTotals: (code: TakenTwiceCode) => `In the totals ${takenTwice(code)}.`,
    },

    notes: {
      title: "Look again",
      told: (told: SectionNote & { section: SectionNameCode }) => {
        const name = t.capital(say<SectionNameCode>(sectionName, told.section))
        if (told.code === "bare-coat")
          return told.part === "ends"
            ? `${name}: the mix on the roots would reach ${t.mm(told.toMm)}, on hair of ${t.told.cm(told.lengthCm)}. Mix ${told.mix} coats nothing.`
            : `${name}: product starts ${t.mm(told.startMm)} from the scalp and the roots end at ${t.mm(told.toMm)}. Mix ${told.mix} coats nothing.`
        return told.code === "deep-slice"
          ? `${name} is ${t.mm(told.depthMm)} deep: over ${t.mm(told.mostMm)} the inside of a solid slice stays darker.`
          : `${name}: product would start ${t.mm(told.startMm)} from the scalp and end before that, on hair of ${t.told.cm(told.lengthCm)}. Nothing is coated.`
      },
      cure: (code: SectionNote["code"]): string =>
        ({
          "deep-slice": "Make it thinner",
          bare: "Start nearer, reach only as far as needed",
          "bare-coat": "Coat it with one mix",
        })[code],
    },

    totals: {
      title: "Totals by zone",
      zone: "Zone",
      foils: "Foils",
      hairs: "Hairs",
      hairToCoat: "Hair to coat",
      product: "Product",
      zones: {
        top: t.capital(zones.top),
        left: t.capital(zones.left),
        right: t.capital(zones.right),
        back: t.capital(zones.back),
      },
      all: "In all",
    },
  }

  function takenTwice({ lowG, highG, pairs, more }: TakenTwiceCode) {
    const named = pairs.map((pair) => t.and(pair.map(nameOf)))
    const others = more > 0 ? [t.count(more, { one: "# more pair", other: "# more pairs" })] : []
    return `${t.gramsRange({ low: lowG, mid: lowG, high: highG })} less: hair taken twice, by ${[...named, ...others].join("; ")}`
  }

  function nameOf(code: SectionNameCode) {
    return "number" in code ? t.whole(code.number) : say<SectionNameCode>(sectionName, code)
  }
}
