import type { PlansWords } from "../../en/plans/plans"

/** What each key does. The letters are of the tools, and the same in every language. */
export const keys: PlansWords["keys"] = {
  title: "Клавіші",
  rows: {
    tools: {
      keys: "V  S  W  B  P  L  D  H",
      does: "вибрати, слайс, штопка, начіс, панель, залишити, поділити, лінія росту",
    },
    free: { keys: "Alt під час малювання", does: "малює вільно, без прив’язки" },
    nudge: { keys: "← → ↑ ↓ на схемі", does: "переміщує вибране на 1 мм, із Shift на 5" },
    fingers: { keys: "Дотик 2 пальцями, 3", does: "відмінити, повторити" },
    escape: { keys: "Escape", does: "скасовує початий штрих" },
    undo: { keys: "Ctrl+Z, Ctrl+Shift+Z", does: "відмінити, повторити" },
    copy: { keys: "Ctrl+A, Ctrl+C, Ctrl+V", does: "вибрати все, копіювати, вставити" },
    several: {
      keys: "Shift або Ctrl на схемі",
      does: "торкніться, щоб додати до вибраного; обведіть рамкою кілька",
    },
    list: { keys: "↑ ↓ у списку", does: "вибирає фольгу; із Shift — кілька" },
    order: { keys: "Alt+↑ Alt+↓ у списку", does: "накласти раніше, пізніше" },
    mirror: { keys: "M у списку", does: "віддзеркалити на другий бік" },
    remove: { keys: "Delete у списку", does: "видалити" },
    number: { keys: "↑ ↓ у числі", does: "на крок більше, менше" },
    help: { keys: "?", does: "ці клавіші" },
  },
}
