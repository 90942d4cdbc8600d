import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import type { Tools } from "../../tools"
import { foilCount } from "./counted"

type MapWords = PlacementWords["map"]

/** Words on the map and beside the hand. */
export const map = (t: Tools, { directions }: CommonWords): MapWords => {
  const [left, right] = ["Лівий бік клієнта", "Правий бік клієнта"]
  const views: MapWords["views"] = {
    front: "Спереду",
    left: "Лівий бік",
    right: "Правий бік",
    back: "Ззаду",
    top: "Зверху",
    turned: "Поворот",
    unrolled: "Розгортка",
  }
  return {
    title: "Схема голови",
    views,
    edges: {
      front: [right, left],
      left: ["Обличчя", "Потилиця"],
      right: ["Потилиця", "Обличчя"],
      back: [left, right],
      top: [left, right],
      turned: null,
      unrolled: [left, right],
    },
    enlarge: (view) => `${views[view]}: зробити великим видом`,
    framings: { hairline: "Лінія росту", whole: "Уся голова" },
    firstStroke: "Проведіть уздовж пунктиру",
    turn: "Повернути голову",
    turns: { left: "← Ліворуч", right: "Праворуч →", higher: "↑ Вище", lower: "↓ Нижче" },
    /** What the large view shows, for whoever does not see it. */
    summary: ({ left, right, centre }) => {
      const sides = [
        [right, `${t.whole(right)} праворуч`],
        [left, `${t.whole(left)} ліворуч`],
        [centre, `${t.whole(centre)} посередині`],
      ] as const
      const foils = foilCount(t, left + right + centre)
      const shown = sides.filter(([count]) => count > 0).map(([, words]) => words)
      return shown.length === 0 ? "З цього боку голови фольги немає" : `${foils}: ${shown.join(", ")}`
    },
    /** What a tap on the map took in hand; hair left out has no number of its own. */
    selected: ({ name, what }) => (name === null ? `Вибрано: ${what}` : `Вибрано: ${name}, ${what}`),
    strokeCancelled: "Штрих скасовано",
    snapped: ({ to, gapMm }) =>
      to === "last parting"
        ? `Прив’язка: паралельно останньому проділу, проміжок ${t.mm(gapMm, 1)}`
        : `Прив’язка: ${directions[to]}`,
    told: ({ done, where, runs }) => `${done}; ${where}, ${runs}`,
  }
}
