import type { SectionKind } from "../../../../geometry/section/section"
import type { DepthWord, RootWord, StitchWord } from "../../../../presets/placement/foils"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { PairCode } from "../../../core/placement/pairCode"
import type { PlaceCode, Side } from "../../../core/placement/places"
import { say } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** Every way to change the sections in hand without a pointer, and adding one by typing. */
export const editor = (t: Tools, names: CommonWords) => {
  const { kinds, place, sectionName, onSide, sides } = names
  const depths: Record<DepthWord, string> = {
    micro: "Micro",
    fine: "Fine",
    standard: "Standard",
    heavy: "Forte",
  }
  const stitches: Record<StitchWord, string> = { fine: "Fine", medium: "Moyenne", chunky: "Large" }
  const roots: Record<RootWord, string> = {
    tight: "Au plus près",
    standard: "Standard",
    soft: "Douce",
    regrowth: "Repousse seule",
  }
  return {
    several: (sections: number) =>
      t.count(sections, { one: "# section choisie", other: "# sections choisies" }),
    title: ({
      kind,
      at,
      number,
      name,
    }: {
      kind: SectionKind
      at: PlaceCode
      number: number | null
      name: string
    }) => {
      const what = `${t.capital(kinds[kind])}, ${say<PlaceCode>(place, at)}`
      const named = name ? `${name} : ${what}` : what
      return number === null ? named : `${t.whole(number)} ${named}`
    },
    close: "Fermer",
    kind: "Type de section",
    figures: {
      direction: "Direction",
      parting: "Séparation",
      scalp: "Cuir chevelu",
      share: "Part de cheveux prise",
      hairs: "Cheveux",
      strandLength: "Longueur de mèche",
      hair: "Poids",
      hairToCoat: "À enduire",
      foils: "Papillotes",
      product: "Produit",
    },
    name: "Nom",
    /** Which it makes a pair with. */
    pair: ({ other, side }: PairCode) =>
      side === "centre"
        ? `Paire avec ${say<SectionNameCode>(sectionName, other)} : tout changement vaut pour les deux.`
        : `Paire avec ${say<SectionNameCode>(sectionName, other)}, ${onSide[side]} : tout changement vaut pour les deux.`,
    breakPair: "Défaire la paire",
    wide: (foils: number) =>
      `Plus large que sa papillote : ${t.count(foils, { one: "# papillote", other: "# papillotes côte à côte" })}.`,
    split: (foils: number) => `Diviser en ${t.count(foils, { one: "# papillote", other: "# papillotes" })}`,

    behindHairline: "Derrière la lisière",
    fromCentreFront: (side: Exclude<Side, "centre">) => `Du milieu du front, à ${sides[side]}`,
    length: "Longueur",
    angle: "Angle",
    runs: "Sens",

    taken: "Cheveux pris",
    takenFrom: { front: "Devant", behind: "Derrière la séparation" },
    depthOfAll: "Épaisseur",
    depthAtStart: "Épaisseur au début",
    depthAtEnd: "Épaisseur à la fin",
    depths,
    depth: (word: DepthWord, mm: number) => `${depths[word]} ${t.mm(mm, 1)}`,
    stitch: "Maille",
    stitches,
    stitchOf: (word: StitchWord, mm: number) => `${stitches[word]} ${t.mm(mm, 1)}`,
    productStarts: "Début du produit",
    roots,
    root: (word: RootWord, mm: number) =>
      word === "regrowth" ? roots[word] : `${roots[word]} ${t.mm(mm, 1)}`,

    all: "Tous les réglages",
    stitchMm: "Maille",
    gapMm: "Écart",
    dipMm: "Profondeur de tricotage",
    backcombedFrom: "Base du crêpage",
    bases: { slice: "Une tranche", weave: "Un tricotage" },
    pushedShare: "Part crêpée",
    cushion: "Coussin",
    note: "Note",
    mapNumber: "N° sur le schéma",
    rootDistance: "Début, du cuir chevelu",
    coatedFrom: "Enduite de",
    coatedTo: "Enduite jusqu’à",
    coat: "Enduire",
    faces: { both: "Les deux faces", one: "Surface seule (peinte)" },
    carrier: "Enveloppe",
    carrierWidth: "Largeur papillote",
    carrierLength: "Longueur papillote",
    elevation: "Élévation",
    overDirection: "Surdirection",
    foilLie: "Sens de papillote",
    mix: "Mélange",
    rootsMix: {
      legend: "Mélange à la racine",
      none: "Comme le reste",
      onlyOne: "Un second mélange pour la racine s’ajoute sous Formule.",
      to: "Fin de racine, du cuir chevelu",
      first: "Posé en premier",
      firsts: { ends: "Pointes", roots: "Racine" },
      after: "Racine posée plus tard de",
      afterNote:
        "0 : les deux en un seul passage. Sinon on rouvre pour la racine, qui a son propre temps et se note à part.",
    },

    typing: {
      title: "Ajouter par saisie",
      kind: "Quoi",
      side: "Côté",
      from: "De",
      to: "À",
      startsBehind: "Derrière la lisière au départ",
      drift: "Recule de",
      add: (kind: SectionKind) => `Ajouter : ${kinds[kind]}`,
      refused: "Choisissez deux points plus éloignés l’un de l’autre.",
    },
  }
}
