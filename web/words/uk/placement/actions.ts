import type { PlacementWords } from "../../en/placement/placement"

/** What one tap does to the sections in hand, or with none in hand to the head. */
export const actions = (): PlacementWords["actions"] => ({
  title: "Що зробити",
  repeatBehind: "Повторити позаду",
  thinner: "Тонше",
  thicker: "Товще",
  mirror: "Віддзеркалити",
  towardsHairline: "До лінії росту",
  awayFromHairline: "Від неї",
  stackBehind: "Стопка позаду…",
  leaveBetween: "Залишити волосся між цими двома",
  leaveVeil: "Залишити вуаль",
  leaveBabyHairs: "Залишити пушок",
  copy: "Копіювати",
  earlier: "Раніше",
  later: "Пізніше",
  more: "Більше",
  delete: "Видалити",
  /** What hair left out is called on the map and in the list. */
  names: {
    veil: "Вуаль",
    babyHairs: "Пушок",
    between: (front, back) => `Волосся між ${front} і ${back}`,
  },
})
