import type { SectionKind } from "../../../../geometry/section/section"
import type { SectionNote } from "../../../core/checks/sectionNotes"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { TakenTwiceCode } from "../../../core/figures/takenTwice"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { PairCode } from "../../../core/placement/pairCode"
import type { PlaceCode } from "../../../core/placement/places"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { articles } from "../common/articles"
import type { CommonWords } from "../common/common"
import { pieces } from "../common/pieces"

/** The foils in the order they are applied, and the totals of them. */
export const list = (t: Tools, names: CommonWords) => {
  const { kinds, place, sectionName, onSide, zones } = names
  const { the } = articles(t, names)
  /** `rank` tells sections of one kind at one place apart, from the hairline back. */
  const whatAndWhere = ({ kind, at, rank }: { kind: SectionKind; at: PlaceCode; rank: number | null }) => {
    const what = `${t.capital(kinds[kind])}, ${say<PlaceCode>(place, at)}`
    return rank === null ? what : `${what}, ${ordinal(rank)}`
  }
  const ordinal = (n: number) => t.ordinal(n, { one: "#re", other: "#e" })
  return {
    panel: "Papillotes",
    title: (foils: number, piece: Piece) => (foils === 0 ? "Papillotes" : pieces(t).count(foils, piece)),
    inOrder: "dans l’ordre de pose",
    label: "Papillotes dans l’ordre de pose",
    empty:
      "Pas encore de papillotes. Choisissez « Tranche » et tracez le long de la lisière, prenez une technique, ou ajoutez-en une par saisie.",
    /** 1st, 2nd, 3rd: a place in the order of application, never a number on the map. */
    ordinal,
    dragHint: "Glisser pour poser plus tôt ou plus tard",
    whatAndWhere,
    leftOut: ({ name, at, rank }: { name: string; at: PlaceCode; rank: number | null }) => {
      const what = `${name || t.capital(kinds["left-out"])}, ${say<PlaceCode>(place, at)}`
      return rank === null ? what : `${what}, ${ordinal(rank)}`
    },
    mix: (mix: string) => `mélange ${mix}`,
    noProduct: "sans produit",
    lengthAndDepth: ({ lengthMm, startMm, endMm }: { lengthMm: number; startMm: number; endMm: number }) =>
      startMm === endMm
        ? `${t.mm(lengthMm)} × ${t.mm(startMm, 1)}`
        : `${t.mm(lengthMm)} × ${t.number(startMm, 1)}–${t.mm(endMm, 1)}`,
    /** Which section a section makes a pair with, and on which side that lies. */
    pair: ({ other, side }: PairCode) =>
      side === "centre"
        ? `paire avec ${say<SectionNameCode>(sectionName, other)}`
        : `paire avec ${say<SectionNameCode>(sectionName, other)}, ${onSide[side]}`,
    selectSeveral: "Choix multiple",
    all: "Tout",
    copy: "Copier",
    paste: (sections: number) => `Coller ${t.whole(sections)}`,
    numberInOrder: "Numéroter dans cet ordre",
    selected: (sections: number) =>
      t.count(sections, { one: "# section choisie", other: "# sections choisies" }),
    copied: (sections: number) => t.count(sections, { one: "# section copiée", other: "# sections copiées" }),
    copyRefused: "Une fenêtre privée n’enregistre rien, et copier demande l’espace du navigateur.",
    pasteUnreadable: "Ce qui a été copié est illisible. Copiez les sections de nouveau.",
    pasteNothing: "Copiez d’abord quelque chose.",
    dragCancelled: "Laissée à sa place",

    overlaps: {
      title: "Papillotes superposées",
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
        const [first, second] = [the(earlier), t.capital(the(later))]
        if (later.code === "left-out") return `${second} couvre ${t.area(areaCm2)} des cheveux de ${first}.`
        return earlier.code === "left-out"
          ? `${second} prend ${t.area(areaCm2)} des cheveux réservés à ${first}.`
          : `${second} prend ${t.area(areaCm2)} des cheveux de ${first}.`
      },
      reduce: (section: SectionNameCode) => `Réduire ${the(section)}`,
      /** How much less the totals are than the rows together. */
      takenTwice,
      inTotals: (code: TakenTwiceCode) => `Dans les totaux, ${takenTwice(code)}.`,
    },

    notes: {
      title: "À revoir",
      told: (told: SectionNote & { section: SectionNameCode }) => {
        const name = t.capital(the(told.section))
        if (told.code === "bare-coat")
          return told.part === "ends"
            ? `${name} : le mélange de la racine irait jusqu’à ${t.mm(told.toMm)}, sur des cheveux de ${t.cm(told.lengthCm)}. Le mélange ${told.mix} n’enduit rien.`
            : `${name} : le produit commence à ${t.mm(told.startMm)} du cuir chevelu et la racine finit à ${t.mm(told.toMm)}. Le mélange ${told.mix} n’enduit rien.`
        return told.code === "deep-slice"
          ? `${name} a ${t.mm(told.depthMm)} d’épaisseur : au-delà de ${t.mm(told.mostMm)}, l’intérieur d’une tranche pleine reste plus foncé.`
          : `${name} : le produit commencerait à ${t.mm(told.startMm)} du cuir chevelu et finirait avant, sur des cheveux de ${t.cm(told.lengthCm)}. Rien n’est enduit.`
      },
      cure: (code: SectionNote["code"]) =>
        ({
          "deep-slice": "L’affiner",
          bare: "Commencer plus près, pas plus loin qu’il ne faut",
          "bare-coat": "Enduire d’un seul mélange",
        })[code],
    },

    totals: {
      title: "Totaux par zone",
      zone: "Zone",
      foils: "Papillotes",
      hairs: "Cheveux",
      hairToCoat: "À enduire",
      product: "Produit",
      zones: {
        top: t.capital(zones.top),
        left: t.capital(zones.left),
        right: t.capital(zones.right),
        back: t.capital(zones.back),
      },
      all: "En tout",
    },
  }

  function takenTwice({ lowG, highG, pairs, more }: TakenTwiceCode) {
    const named = pairs.map((pair) => t.and(pair.map(nameOf)))
    const others = more > 0 ? [t.count(more, { one: "# autre paire", other: "# autres paires" })] : []
    return `${t.gramsRange({ low: lowG, mid: lowG, high: highG })} de moins : cheveux pris deux fois, par ${[...named, ...others].join(" ; ")}`
  }

  function nameOf(code: SectionNameCode) {
    return "number" in code ? t.whole(code.number) : say<SectionNameCode>(sectionName, code)
  }
}
