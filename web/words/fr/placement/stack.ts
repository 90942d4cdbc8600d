import type { SectionKind } from "../../../../geometry/section/section"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { Tools } from "../../tools"
import { articles } from "../common/articles"
import type { CommonWords } from "../common/common"

/** So many more foils behind one. */
export const stack = (t: Tools, names: CommonWords) => {
  const { kinds } = names
  const { the } = articles(t, names)
  return {
    title: (section: SectionNameCode) => `Empiler derrière ${the(section)}`,
    allFit: (asked: number) => t.count(asked, { one: "Elle tient.", other: "Les # tiennent." }),
    touching:
      "Écart 0 mm : elles sont dos à dos et partagent des cheveux aux bords. 1 mm les tient séparées.",
    bothSides: ({ foils, sections }: { foils: number; sections: number }) =>
      `Des deux côtés, par paires : ${total({ foils, sections })} en tout.`,
    place: ({ fits, asked, sides }: { fits: number; asked: number; sides: 1 | 2 }) => {
      const those =
        fits < asked && fits > 0
          ? t.count(fits, { one: "Placer la seule qui tient", other: "Placer les # qui tiennent" })
          : `Placer ${t.whole(fits)}`
      return sides === 2 ? `${those} de chaque côté` : those
    },
    cancelled: "Pile annulée",
    total,
    more: "Combien en plus",
    bySliding: "Combien en plus, par glissement",
    oneMore: "Une de plus",
    oneFewer: "Une de moins",
    handle: "Combien en plus, depuis la dernière séparation",
    handleValue: ({ shown, sides }: { shown: number; sides: 1 | 2 }) =>
      sides === 2
        ? t.count(shown, { one: "# de plus de chaque côté", other: "# de plus de chaque côté" })
        : t.count(shown, { one: "# de plus", other: "# de plus" }),
    handleName: ({ shown, sides }: { shown: number; sides: 1 | 2 }) =>
      sides === 2 ? `${t.whole(shown)} + ${t.whole(shown)} de plus` : `${t.whole(shown)} de plus`,

    gap: "Écart",
    depthOfEach: "Épaisseur de chacune",
    depthOfKind: (kind: SectionKind) => `Épaisseur par ${kinds[kind]}`,
    follow: "Suivre",
    follows: { hairline: "La lisière", parting: "Cette séparation" },
    eachSecond: "Une sur deux",
    inLine: "Alignée",
    brick: "En quinconce",
    shift: "Décaler le long de la séparation de",
    alternate: "Alterner avec",
    allTheSame: "Toutes pareilles",
    alternateKind: (kind: SectionKind) => t.capital(kinds[kind]),
  }

  function total({ foils, sections }: { foils: number; sections: number }) {
    if (foils === sections) return t.count(foils, { one: "# papillote", other: "# papillotes" })
    const all = t.count(sections, { one: "# section", other: "# sections" })
    return foils === 0 ? all : `${all}, dont ${t.count(foils, { one: "# papillote", other: "# papillotes" })}`
  }
}
