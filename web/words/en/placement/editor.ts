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
  const { kinds, landmarks, place, sectionName, onSide, sides } = names
  const depths: Record<DepthWord, string> = {
    micro: "Micro",
    fine: "Fine",
    standard: "Standard",
    heavy: "Heavy",
  }
  const stitches: Record<StitchWord, string> = { fine: "Fine", medium: "Medium", chunky: "Chunky" }
  const roots: Record<RootWord, string> = {
    tight: "Tight",
    standard: "Standard",
    soft: "Soft",
    regrowth: "Regrowth only",
  }
  return {
    several: (sections: number) =>
      t.count(sections, { one: "# section selected", other: "# sections selected" }),
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
      const named = name ? `${name}: ${what}` : what
      return number === null ? named : `${t.whole(number)} ${named}`
    },
    close: "Close",
    kind: "Section type",
    figures: {
      direction: "Direction",
      parting: "Parting",
      scalp: "Scalp",
      share: "Share of hair taken",
      hairs: "Hairs",
      strandLength: "Strand length",
      hair: "Hair",
      hairToCoat: "Hair to coat",
      foils: "Foils",
      product: "Product",
    },
    name: "Name",
    /** Which it makes a pair with. */
    pair: ({ other, side }: PairCode) =>
      side === "centre"
        ? `Pair with ${say<SectionNameCode>(sectionName, other)}: changes apply to both.`
        : `Pair with ${say<SectionNameCode>(sectionName, other)} ${onSide[side]}: changes apply to both.`,
    breakPair: "Break the pair",
    wide: (foils: number) =>
      `Wider than its foil: ${t.count(foils, { one: "# foil", other: "# foils side by side" })}.`,
    split: (foils: number) => `Split into ${t.count(foils, { one: "# foil", other: "# foils" })}`,

    behindHairline: "Behind the hairline",
    fromCentreFront: (side: Exclude<Side, "centre">) => `From ${landmarks["centre front"]}, ${sides[side]}`,
    length: "Length",
    angle: "Angle",
    runs: "Runs",

    taken: "Hair taken",
    takenFrom: { front: "In front", behind: "Behind the parting" },
    depthOfAll: "Depth",
    depthAtStart: "Depth at the start",
    depthAtEnd: "Depth at the end",
    depths,
    depth: (word: DepthWord, mm: number) => `${depths[word]} ${t.mm(mm, 1)}`,
    stitch: "Stitch",
    stitches,
    stitchOf: (word: StitchWord, mm: number) => `${stitches[word]} ${t.mm(mm, 1)}`,
    productStarts: "Product starts",
    roots,
    root: (word: RootWord, mm: number) =>
      word === "regrowth" ? roots[word] : `${roots[word]} ${t.mm(mm, 1)}`,

    all: "All settings",
    stitchMm: "Stitch",
    gapMm: "Gap",
    dipMm: "Weave depth (tail dip)",
    backcombedFrom: "Backcombed from",
    bases: { slice: "A slice", weave: "A weave" },
    pushedShare: "Share backcombed",
    cushion: "Cushion",
    note: "Note",
    mapNumber: "Number on the map",
    rootDistance: "Start, from the scalp",
    coatedFrom: "Coated from",
    coatedTo: "Coated to",
    coat: "Coat",
    faces: { both: "Both sides", one: "Surface only (painted)" },
    carrier: "Wrapped in",
    carrierWidth: "Foil width",
    carrierLength: "Foil length",
    elevation: "Elevation",
    overDirection: "Over-direction",
    foilLie: "Foil direction",
    mix: "Mix",
    rootsMix: {
      legend: "Mix on the roots",
      none: "As the rest",
      onlyOne: "A second mix for the roots is added under Formula.",
      to: "Roots end, from the scalp",
      first: "Goes on first",
      firsts: { ends: "Ends", roots: "Roots" },
      after: "Roots go on later by",
      afterNote:
        "0: both in one visit. Else the foil is opened again for the roots, which are timed and tapped by themselves.",
    },

    typing: {
      title: "Add by typing",
      kind: "What",
      side: "Side",
      from: "From",
      to: "To",
      startsBehind: "Behind the hairline where it starts",
      drift: "Drifts back by",
      add: (kind: SectionKind) => `Add ${kinds[kind]}`,
      refused: "Choose two places that lie farther apart.",
    },
  }
}
