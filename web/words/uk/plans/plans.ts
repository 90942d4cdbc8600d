import type { PlansWords } from "../../en/plans/plans"
import type { Tools } from "../../tools"
import { keys } from "./keys"
import { notKept } from "./notKept"

/** The top bar, the plans of this browser, saving, keys and the language. */
export const plans = (t: Tools): PlansWords => ({
  done: {
    rename: "Нова назва плану",
    "follow-scale": "За тим, чого навчили ваги",
  },
  notKept: notKept(t),
  keys,
  pageTitle: "Partline",
  untitled: "План без назви",
  bar: {
    plans: "Плани…",
    skip: "До екрана",
    named: (name) => `${name}: Плани…`,
    visit: "Процедура",
    screens: {
      client: "Клієнт",
      placement: "Схема",
      formula: "Формула",
      timing: "Час",
      sheets: "Аркуші",
    },
    pageTitle: (screen, plan) => `${screen}: ${plan} – Partline`,
    example: "Вигаданий приклад.",
    startOwn: "Почати власний план",
    undo: "Відмінити",
    redo: "Повторити",
    undoWhat: (what) => `Відмінити: ${what}`,
    redoWhat: (what) => `Повторити: ${what}`,
  },
  undone: (what) => `Відмінено: ${what}`,
  doneAgain: (what) => `Повторено: ${what}`,
  lastNotOpened: (why) => `Останній план не вдалося відкрити. ${why}`,
  saving: {
    "not-yet": "Ще не збережено",
    saving: "Збереження…",
    saved: "Збережено",
    notSaved: "Не збережено.",
    asCopy: "Зберегти як копію",
    toFile: "Зберегти у файл",
  },
  dialog: {
    title: "Плани",
    newPlan: "Новий план",
    fromExample: "Почати з прикладу",
    saveEverything: "Зберегти все у файл",
    saveForColleague: "Зберегти для колеги",
    fileHolds:
      "«Зберегти все у файл» містить відповіді клієнта про здоров’я, шкірні тести та обходи заборон, які прочитає кожен, хто має файл. «Зберегти для колеги» їх не містить.",
    stay: "Плани лишаються в цьому браузері й покидають його лише як файли. Збережіть план у файл, щоб узяти його з собою або мати другу копію.",
  },
  list: {
    title: "Збережено в цьому браузері",
    none: "Ще немає. План зберігається, щойно щось намальовано.",
    numbered: (title, number) => `${title} (${t.whole(number)})`,
    openNow: "відкрито зараз",
    moment: (iso) => t.dayAndTime(Date.parse(iso)),
    details: (items) => items.join(", "),
    rename: "Назвати",
    renameNamed: (name) => `Перейменувати: ${name}`,
    newName: "Нова назва",
    save: "Зберегти",
    duplicate: "Дублювати",
    duplicateNamed: (name) => `Дублювати: ${name}`,
    copyOf: (name) => (name.trim() ? `${name}, копія` : "Копія"),
    delete: "Видалити",
    deleteNamed: (name) => `Видалити: ${name}`,
    deleted: (name) => `Видалено: ${name}. У кошику лишається 30 днів.`,
    undo: "Відмінити",
    more: (count) => `Показати ще ${t.whole(count)}`,
    find: "Знайти план",
  },
  bin: {
    title: (count) =>
      `Кошик: ${t.count(count, { one: "# план", few: "# плани", many: "# планів", other: "# плану" })}`,
    days: (count) =>
      `остаточне видалення через ${t.count(count, { one: "# день", few: "# дні", many: "# днів", other: "# дня" })}`,
    putBack: "Повернути",
    putBackNamed: (name) => `Повернути: ${name}`,
  },
  aside: {
    title: (count) => `Не вдалося прочитати планів: ${t.whole(count)}`,
    why: "Їх збережено так, як записано. Новіший Partline може їх прочитати; кожен можна зберегти у файл.",
    tryAgain: "Спробувати ще раз",
    save: "Зберегти у файл",
    saveNamed: (name) => `Зберегти у файл: ${name}`,
  },
  readOnly: {
    title: "Ці плани можна зберегти у файли, але не відкрити тут",
    save: "Зберегти у файл",
    saveNamed: (name) => `Зберегти у файл: ${name}`,
  },
  language: {
    title: "Мова",
    unchecked: "перекладено без колориста — носія мови; виправлення вітаються",
  },
  parts: {
    waiting: "Завантаження…",
    failed: "Цю частину не вдалося завантажити.",
    stays: "План лишається, як є.",
    tryAgain: "Спробувати ще раз",
    reload: "Перезавантажити сторінку",
  },
})
