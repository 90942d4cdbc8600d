import type { TechniquesWords } from "../../en/techniques/techniques"
import type { Tools } from "../../tools"
import { sectionCount } from "../placement/counted"
import { draft } from "./draft"
import { frames } from "./frames"
import { others } from "./others"
import { stepWords } from "./stepWords"

/** Techniques: those of the house in words, and the panel that shows them beside the salon's own. */
export const techniques = (t: Tools): TechniquesWords => {
  const steps = stepWords(t)
  return {
    done: {},
    house: { ...frames(steps), ...others(t, steps) },
    leftOut: { veil: "Вуаль", "baby-hairs": "Пушок", edges: "Крайове волосся" },
    measures: {
      depth: "Товщина",
      "slice-depth": "Товщина слайса",
      "weave-depth": "Товщина для штопки",
      "backcomb-depth": "Товщина для начосу",
      gap: "Проміжок",
      rows: "Ряди",
      "rows-a-side": "Рядів на бік",
      "slices-a-side": "Слайсів на бік",
      weaves: "Штопки",
      "rows-over-forehead": "Ряди над лобом",
      "rows-on-heavy-side": "Ряди на насиченому боці",
    },
    ways: {
      only: "Як є",
      "bright-edge": "Найсвітліше на краю",
      "soft-edge": "Найм’якше на краю",
      "in-turn": "Слайс і штопка по черзі",
      melted: "Розтушовка з начосом",
      "parted-left": "Проділ ліворуч",
      "parted-right": "Проділ праворуч",
      "heavy-right": "Насичено праворуч",
      "heavy-left": "Насичено ліворуч",
    },
    draft: draft(t),

    panel: {
      startFrom: "Почати з техніки",
      title: "Техніки",
      own: "Ваші",
      comesTo: ({ foils, low, high, minLow, minHigh, withoutRoom }) => {
        const told = [
          t.count(foils, { one: "# фольга", few: "# фольги", many: "# фольг", other: "# фольги" }),
          t.gramsRange({ low, mid: low, high }),
          `накладання ${t.minuteRange(minLow, minHigh)}`,
        ].join(", ")
        return withoutRoom > 0 ? `${told}; тут не вміщується: ${sectionCount(t, withoutRoom)}` : told
      },
      read: "Кроки й варіанти",
      readOf: (name) => `Кроки й варіанти: ${name}`,
      steps: "Кроки",
      notes: "Нотатки",
      placeHere: "На цю голову",
      placeOnNew: "У новий план",
      saveAsOwn: "Зберегти як свою",
      saveAsCopy: "Зберегти як копію",
      edit: "Назва, зміни",
      editing: (name) => `Зміна техніки «${name}»`,
      delete: "Видалити",
      stepsStay: "Кроки лишаються, як написано.",
      vary: "Змінити перед розміщенням",
      way: "Варіант",
      stitch: "Стібок",
      span: ({ low, high, usual }) => `від ${low} до ${high}, зазвичай ${usual}`,
      anotherHead: "На іншій голові",
      head: "Голова",
      hairline: "Лінія росту",
      thisPlans: "З цього плану",
      heads: { small: "Мала, 52 см", average: "Середня", large: "Велика, 62 см" },
      hairlines: { round: "Округла", straight: "Пряма", receding: "З виїмками", peaked: "З мисиком" },
    },

    own: {
      save: (selected) =>
        selected === 0
          ? "Зберегти всі пасма як техніку…"
          : selected === 1
            ? "Зберегти вибране пасмо як техніку…"
            : `Зберегти вибране як техніку (${sectionCount(t, selected)})…`,
      titleOf: (count) => `Техніка: ${sectionCount(t, count)}`,
      name: "Назва",
      nameHint: "Назва хоча б з однієї літери",
      aim: "Для чого вона, одним реченням",
      steps: "Кроки, по одному в рядку",
      notes: "Нотатки",
      private:
        "Техніку можуть передати далі: не пишіть у ній нічого про клієнта. Нотатки окремих фольг лишаються з планом.",
      saveThis: "Зберегти цю техніку",
      saved: (name) => `Техніку «${name}» збережено`,
      savedAlready: (name) => `Техніку «${name}» уже було збережено`,
      deleted: (name) => `Техніку «${name}» видалено`,
      deletedNote: (name) => `«${name}» видалено.`,
      undo: "Відмінити",
      openFile: "Відкрити файл техніки…",
      file: "Файл техніки",
      unreadable: (count) =>
        `Збережені тут техніки, яких цей Partline не може прочитати: ${t.whole(count)}. Вони лишаються, як є.`,
    },

    share: {
      copyLink: "Копіювати посилання",
      share: "Поділитися…",
      toFile: "Зберегти у файл",
      tooLong: "Задовго для посилання: збережіть у файл і надішліть його.",
      copyFromHere: "Скопіюйте посилання звідси:",
      copied: "Посилання скопійовано. У ньому техніка, нічого про клієнта.",
      link: "Посилання",
      byLink: "Техніка за посиланням",
      nameless: "Техніка без назви",
      opened: "Ви відкрили надіслану техніку. Нічого не збережено й не змінено, доки ви не виберете.",
      onTop: ({ plan, count }) =>
        `У плані «${plan}» уже є ${sectionCount(t, count)}: на цій голові техніка додасться до них.`,
    },
  }
}
