import type { classProblems as english } from "../en/classProblems"

/** What is wrong with the list of a class or of its heads, a row of it by its line. */
export const classProblems: typeof english = (t) => ({
  "too-large": ({ mostMb }) => `Очікується список щонайбільше ${t.whole(mostMb)} МБ. Це інший файл?`,
  "columns-missing": ({ columns }) =>
    `Рядок 1: бракує ${t.and(columns)}. Очікується заголовок із цими стовпцями.`,
  "column-twice": ({ column }) => `Рядок 1: стовпець "${column}" є двічі. Залиште один.`,
  "no-rows": "У списку немає рядків під заголовком.",
  "cell-empty": ({ line, column }) =>
    `Рядок ${t.whole(line)}, ${column}: порожньо. Заповніть або вилучіть рядок.`,
  "no-file-name": ({ line, found }) =>
    `Рядок ${t.whole(line)}, name: "${found}" не може бути назвою файлу. Пишіть літери або цифри, щонайбільше 80.`,
  twice: ({ line, first, column, found }) =>
    `Рядок ${t.whole(line)}, ${column}: "${found}" дає той самий файл, що й рядок ${t.whole(first)}. Розрізніть їх.`,
  "no-number": ({ line, column, found }) =>
    `Рядок ${t.whole(line)}, ${column}: очікуються міліметри понад 0, знайдено "${found}".`,
  measures: ({ line }) =>
    `Рядок ${t.whole(line)}: очікується або length, breadth, height, або around, over, front-to-nape.`,
  "no-hairline": ({ line, found, known }) =>
    `Рядок ${t.whole(line)}, hairline: очікується ${t.or(known)}, знайдено "${found}".`,
  "head-size": ({ line }) => `Рядок ${t.whole(line)}: жодна голова не має таких розмірів.`,
  "not-in-class": ({ line, found }) =>
    `Рядок ${t.whole(line)}, name: нікого в групі не звати "${found}". Напишіть як у --names.`,
  "learner-without-file": ({ line, name, found }) =>
    found === ""
      ? `Рядок ${t.whole(line)}, file: ${name} не має файлу. Заповніть або вилучіть рядок.`
      : `Рядок ${t.whole(line)}, file: "${found}" (${name}) немає серед файлів, названих один раз після зразка.`,
  "file-without-learner": ({ found }) => `"${found}" не належить нікому в групі. Додайте рядок.`,
})
