import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import type { Tools } from "../../tools"

/** What the hand does on the map, and how this hand works. */
export const toolRail = (t: Tools, { kinds }: CommonWords): PlacementWords["toolRail"] => ({
  draw: "Малювати",
  tools: {
    select: "Вибрати",
    slice: t.capital(kinds.slice),
    weave: t.capital(kinds.weave),
    backcomb: t.capital(kinds.backcomb),
    painted: "Панель",
    "left-out": "Залишити",
    divide: "Поділити",
    hairline: "Лінія росту",
  },
  partingShape: "Форма проділу",
  ways: {
    hairline: "Уздовж лінії росту",
    straight: "Пряма",
    freehand: "Від руки",
  },
  takeHair: "Волосся перед проділом чи за ним",
  taken: { front: "Перед", behind: "За" },
  depth: "Товщина",
  snap: "Прив’язка",
  gapToLast: "Проміжок до останньої",
  hand: "Параметри",
  leftHanded: "Для шульги",
  penOnly: "Малювати лише пером",
  keys: "Клавіші ?",
})
