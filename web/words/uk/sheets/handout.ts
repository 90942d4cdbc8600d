import type { SheetsWords } from "../../en/sheets/sheets"

/** The technique handout. */
export const handout = (): SheetsWords["handout"] => ({
  about: "Навчальний аркуш",
  practise:
    "Спочатку тренуватися на навчальній голові. На людях — лише під наглядом ліцензованого фахівця; передусім інструкція виробника й місцеві правила.",
  aim: "Мета",
  tools: "Інструменти",
  draw: "Намалюйте самі",
  told: "Як це роблять",
  steps: "Крок за кроком",
  timing: "Час",
  faults: "Типові помилки (поширена практика)",
  fault: "Помилка",
  cause: "Причина",
  cure: "Що робити",
  checks: "Перевірте свою роботу",
  assessor: "Екзаменатор",
  student: "Учень",
  date: "Дата",
  unaided: "без допомоги",
  withHelp: "з допомогою",
  notYet: "ще ні",
  remarks: "Примітки",
  assessorName: "Ім’я екзаменатора",
  signature: "Підпис",
})
