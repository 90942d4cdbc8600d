import type { CommandWords } from "../en/command"
import type { Tools } from "../tools"

/** The headless command: what it explains of itself, and what it cannot use. */
export const command = (t: Tools): CommandWords => ({
  done: {},
  eachExplains: "Кожна дія пояснює себе через --help.",
  failed: (why) => `Partline не може цього зробити: ${why}`,
  language: (tags) => `мова речень: ${tags.join(", ")}; en-GB, якщо не вказано`,

  problems: {
    "unknown-verb": ({ verb, known }) => `Дії "${verb}" немає: очікується ${known.join(", ")}.`,
    "unknown-option": ({ option, known }) =>
      known.length > 0
        ? `У цієї дії немає параметра --${option}: очікується ${known.map((name) => `--${name}`).join(", ")}.`
        : `У цієї дії немає параметра --${option}: параметрів не очікується.`,
    "given-twice": ({ option }) => `--${option} вказано двічі: очікується один раз.`,
    "no-value": ({ option }) => `--${option}: після нього очікується значення.`,
    "no-file-expected": ({ file }) => `"${file}" тут не очікується: ця дія не бере файлу.`,
    "file-missing": "Бракує FILE: очікується шлях до плану.",
    "one-file-too-many": ({ file }) => `"${file}" — зайвий файл: очікується шлях до одного плану.`,
    "not-a-choice": ({ option, known, found }) =>
      found === null
        ? `Бракує --${option}: очікується ${t.or(known)}.`
        : `--${option}: очікується ${t.or(known)}, вказано "${found}".`,
    "out-missing": "Бракує --out: очікується шлях до PDF, який буде записано.",
    "cannot-write": ({ path }) => `--out: "${path}" записати не можна: очікується шлях у папці, яка існує.`,
    "cannot-read": ({ file }) =>
      `"${file}" прочитати не можна: очікується шлях до плану, збереженого в Partline.`,
    "cannot-read-list": ({ file }) =>
      `"${file}" прочитати не можна: очікується шлях до списку зважувань, CSV.`,
    "head-choose":
      "Розмір голови: очікується або --length --breadth --height, або --around --over --front-to-nape.",
    "measure-missing": ({ option }) => `Бракує --${option}: очікуються міліметри.`,
    "measure-unusable": ({ option, found }) =>
      `--${option}: очікуються міліметри понад 0, вказано "${found}".`,
    "number-missing": ({ option }) => `Бракує --${option}: очікується ${numbers[option]}.`,
    "number-unusable": ({ option, found }) =>
      `--${option}: очікується ${numbers[option]}, вказано "${found}".`,
    "minutes-unusable": ({ option, found }) =>
      `--${option}: очікується число понад 0, ${minutes[option]}; вказано "${found}".`,
    "levels-together": "--from і --to: очікуються обидва рівні або жодного.",
  },

  overLegalLimit: (percent) =>
    `Увага: у ЄС і Великій Британії в готовому до застосування засобі для волосся дозволено не більше ніж ${t.number(percent)}\u00a0%.`,

  verbs: {
    head: {
      summary: "Розміри на шкірі, площа росту волосся та її зони й орієнтири голови такого розміру.",
      details: [],
      options: {
        length: "мм, від брів до потилиці, циркулем",
        breadth: "мм, у найширшому місці, циркулем",
        height: "мм, від вуха до верху, циркулем",
        around: "мм, обхват голови, стрічкою",
        over: "мм, від вуха до вуха через верх, стрічкою",
        "front-to-nape": "мм, від передньої лінії росту через верх до карка, стрічкою",
        hairline: "round, straight, receding або peaked; round, якщо не вказано",
      },
    },
    measure: {
      summary:
        "Цифри кожного пасма плану в порядку накладання та підсумки; жодної волосини не пораховано двічі.",
      details: [],
      options: {},
    },
    check: {
      summary:
        "Чи можна змішувати за планом, із заборонами й застереженнями: код виходу 1 — заборона, 3 — чогось не запитано, 0 — допущено.",
      details: [],
      options: {},
    },
    mix: {
      summary: "Що змішати для плану: сила, потрібні грами й кожна миска з її хвилиною.",
      details: [],
      options: {},
    },
    sheet: {
      summary: "Аркуш плану як PDF.",
      details: ["--language — мова аркуша; речення про саму команду — мовою --messages."],
      options: {
        kind: "placement, technique, take-home або record",
        paper: "a4 або letter; letter для en-US, інакше a4, якщо не вказано",
        out: "куди записати PDF",
        front:
          "перед, якщо стояти обличчям до клієнта (facing), або як у дзеркалі (mirror); facing, якщо не вказано",
        messages: "мова речень про команду; en-GB, якщо не вказано",
      },
    },
    validate: {
      summary: "Чи є файл планом, який можна відкрити, а якщо ні — що в ньому не так.",
      details: [],
      options: {},
    },
    blend: {
      summary: "Скільки грамів із кожного флакона разом дають потрібну силу, за масою.",
      details: [],
      options: {
        have: "відсотки флаконів через кому: 12,3",
        want: "потрібний відсоток: 6",
        grams: "скільки грамів усього: 90",
      },
    },
    calibrate: {
      summary:
        "Грами на фольгу, вбирання й покриття за зваженими фольгами чи мисками (стовпці hairG,strandAreaCm2,productG і для мисок foils), з діапазонами 80 %.",
      details: [],
      options: {},
    },
    timing: {
      summary:
        "Коли кожну фольгу накладають, коли вона може бути готова й коли її знімають, миски, перевірки та конфлікти.",
      details: [
        "Виводить foils, bowls, looks, firstOnMin, lastOnMin, rinseMin і conflicts; крім того chairMin (увесь запис,",
        "діапазон), heat (коли ввімкнено й вимкнено, або null), steps (змивання, розплутування, тонер за зонами, сушіння) і для",
        "кожної миски її суміш і пасма. Кінець readyMin — null, якщо ціль не досягається вчасно. Правила conflicts: over-run,",
        "under-processed, pot-life, booking і hairline-ahead (одне змивання, а лінія росту готова задовго до потилиці).",
      ],
      options: {
        pace: "хвилин на фольгу, від однієї до наступної; темп плану, якщо не вказано",
        hands: "1: колорист, 2: з асистентом; як у плані, якщо не вказано",
        rinse:
          "each: знімати кожну фольгу, коли готова; together: одне змивання; як у плані, якщо не вказано",
        from: "рівень волосся зараз, 1–10; разом із --to; рівні плану, якщо не вказано",
        to: "цільовий рівень; без нього фольги готові тоді, коли більшість",
        booking: "скільки хвилин у записі; як у плані, якщо не вказано",
      },
    },
  },
})

const numbers = {
  have: "відсотки через кому, 12,3",
  want: "відсоток, 6 або 7.5",
  grams: "грами, 90 або 37.5",
}
const minutes = { pace: "хвилини на фольгу", booking: "хвилини" }
