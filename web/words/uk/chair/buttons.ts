import type { buttons as english } from "../../en/chair/buttons"

export const buttons: typeof english = {
  undo: "Відмінити дотик",
  takeOver: "Керувати тут",
  wentOnEarlier: "Накладено раніше",
  off: "Знято",
  rinseNow: "Змити зараз",
  heatOn: "Тепло увімкнено",
  tonerOff: "Змито",
  tonerOn: (toner) => `${toner}: нанесено`,
}
