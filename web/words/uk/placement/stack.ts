import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { foilCount, sectionCount } from "./counted"

/** So many more foils behind one. */
export const stack = (t: Tools, { kinds, sectionName }: CommonWords): PlacementWords["stack"] => {
  const total = ({ foils, sections }: { foils: number; sections: number }) => {
    if (foils === sections) return foilCount(t, foils)
    const all = sectionCount(t, sections)
    return foils === 0 ? all : `${all}, з них фольг: ${t.whole(foils)}`
  }
  return {
    title: (section) => `Стопка позаду: ${say<SectionNameCode>(sectionName, section)}`,
    allFit: (asked) => (asked === 1 ? "Вміщується." : `Усі вміщуються: ${t.whole(asked)}.`),
    touching: "Проміжок 0 мм: лежать упритул і ділять волосини на краях. 1 мм їх розділяє.",
    bothSides: ({ foils, sections }) => `З обох боків, парами; усього ${total({ foils, sections })}.`,
    place: ({ fits, asked, sides }) => {
      const those =
        fits < asked && fits > 0
          ? `Розмістити ті, що вміщуються: ${t.whole(fits)}`
          : `Розмістити ${t.whole(fits)}`
      return sides === 2 ? `${those} з кожного боку` : those
    },
    cancelled: "Стопку скасовано",
    total,
    more: "Скільки ще",
    bySliding: "Скільки ще, повзунком",
    oneMore: "На одну більше",
    oneFewer: "На одну менше",
    handle: "Скільки ще, від останнього проділу",
    handleValue: ({ shown, sides }) =>
      sides === 2 ? `ще ${t.whole(shown)} з кожного боку` : `ще ${t.whole(shown)}`,
    handleName: ({ shown, sides }) =>
      sides === 2 ? `ще ${t.whole(shown)} + ${t.whole(shown)}` : `ще ${t.whole(shown)}`,

    gap: "Проміжок",
    depthOfEach: "Товщина кожної",
    depthOfKind: (kind) => `Товщина: ${kinds[kind]}`,
    follow: "Уздовж",
    follows: { hairline: "Лінії росту", parting: "Цього проділу" },
    eachSecond: "Кожна друга",
    inLine: "В ряд",
    brick: "Цеглинкою",
    shift: "Зсув уздовж проділу на",
    alternate: "Чергування",
    allTheSame: "Усі однакові",
    alternateKind: (kind) => t.capital(kinds[kind]),
  }
}
