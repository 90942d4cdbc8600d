import type { lesson as english } from "../../en/sheets/lesson"

/** The text of a handout, where an educator changes it. */
export const lesson: typeof english = (t) => ({
  edit: "Змінити текст…",
  asDrawn: "Повернути те, що каже план",
  title: "Що читає група",
  name: "Назва",
  aim: "Мета",
  tools: "Інструменти, по одному в рядку",
  steps: "Як це роблять, по кроку в рядку",
  checks: "Перевірте свою роботу, по пункту в рядку",
  faults: "Поширені помилки",
  addFault: "Додати помилку",
  remove: "Прибрати",
  removeFault: (number) => `Прибрати помилку ${t.whole(number)}`,
  follows: "Те, що ви лишите як є, і далі йтиме за планом. Це читає група: не пишіть нічого про клієнтку.",
  keep: "Зберегти цей текст",
})
