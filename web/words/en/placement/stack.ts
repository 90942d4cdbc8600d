import type { SectionKind } from "../../../../geometry/section/section"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import { say } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"

/** So many more foils behind one. */
export const stack = (t: Tools, { kinds, sectionName }: CommonWords) => {
  const nameOf = (section: SectionNameCode) => say<SectionNameCode>(sectionName, section)
  return {
    title: (section: SectionNameCode) => `Stack behind ${nameOf(section)}`,
    allFit: (asked: number) => t.count(asked, { one: "It fits.", other: "All # fit." }),
    touching: "Gap 0 mm: they lie back to back and share hairs at the edges. 1 mm keeps them apart.",
    bothSides: ({ foils, sections }: { foils: number; sections: number }) =>
      `On both sides, as pairs: ${total({ foils, sections })} in all.`,
    place: ({ fits, asked, sides }: { fits: number; asked: number; sides: 1 | 2 }) => {
      const those =
        fits < asked && fits > 0 ? `Place the ${t.whole(fits)} that fit` : `Place ${t.whole(fits)}`
      return sides === 2 ? `${those} on each side` : those
    },
    cancelled: "Stack cancelled",
    total,
    more: "How many more",
    bySliding: "How many more, by sliding",
    oneMore: "One more",
    oneFewer: "One fewer",
    handle: "How many more, from the last parting",
    handleValue: ({ shown, sides }: { shown: number; sides: 1 | 2 }) =>
      sides === 2
        ? t.count(shown, { one: "# more on each side", other: "# more on each side" })
        : t.count(shown, { one: "# more", other: "# more" }),
    handleName: ({ shown, sides }: { shown: number; sides: 1 | 2 }) =>
      sides === 2 ? `${t.whole(shown)} + ${t.whole(shown)} more` : `${t.whole(shown)} more`,

    gap: "Gap",
    depthOfEach: "Depth of each",
    depthOfKind: (kind: SectionKind) => `Depth of each ${kinds[kind]}`,
    follow: "Follow",
    follows: { hairline: "The hairline", parting: "This parting" },
    eachSecond: "Every second foil",
    inLine: "In line",
    brick: "Brick pattern",
    shift: "Shift along the parting by",
    alternate: "Alternate with",
    allTheSame: "All the same",
    alternateKind: (kind: SectionKind) => t.capital(kinds[kind]),
  }

  function total({ foils, sections }: { foils: number; sections: number }) {
    if (foils === sections) return t.count(foils, { one: "# foil", other: "# foils" })
    const all = t.count(sections, { one: "# section", other: "# sections" })
    return foils === 0 ? all : `${all}, ${t.whole(foils)} of them foils`
  }
}
