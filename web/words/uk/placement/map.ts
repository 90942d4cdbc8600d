import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import type { Tools } from "../../tools"

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
    unrolled: "Розгортка шкіри",
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
    strokeCancelled: "Штрих скасовано",
    snapped: ({ to, gapMm }) =>
      to === "last parting"
        ? `Прив’язка: паралельно останньому проділу, проміжок ${t.mm(gapMm, 1)}`
        : `Прив’язка: ${directions[to]}`,
    told: ({ done, where, runs }) => `${done}; ${where}, ${runs}`,
  }
}
