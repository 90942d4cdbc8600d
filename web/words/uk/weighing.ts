import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import type { ReadingProblem } from "../../core/weighing/weighedBowl"
import { neededColumns } from "../../core/weighing/weighingCsv"
import type { CommonWords } from "../en/common/common"
import type { WeighingWords } from "../en/weighing"
import type { Tools } from "../tools"

export const weighing = (
  t: Tools,
  { foils: foilsWords, kinds, mix: mixName }: CommonWords,
): WeighingWords => ({
  done: {
    "keep-weighing": "Збереження зважування",
    "add-list": "Зважування зі списку",
    "leave-out": "Зважування не враховано",
    "count-again": "Зважування враховано знову",
    "remove-weighing": "Вилучення зважування",
    "back-to-start": "Повернення до початкових цифр",
    "count-all": "Враховано всі зважування",
    "take-start": "Початок із цифр інших салонів",
    "leave-start": "Повернення до галузевих цифр",
  },

  title: "Зважте свої миски",
  bowl: {
    how: "Зважте миску з пензлем перед першою фольгою й після останньої.",
    noFoils: "Фольг ще немає. Потім зважуйте кожну миску, з пензлем, до і після.",
    what: "Що зважено",
    chooseOne: "Вибрати",
    before: "До",
    after: "Після",
    save: ({ productG }) => `Зберегти: використано ${t.number(productG)}\u00a0г`,
    name: {
      bowl: ({ mix, bowl, foils }) =>
        `${t.capital(mixName(mix))}, миска ${t.whole(bowl)}: ${foilsWords(foils)}`,
      foil: ({ foil }) => `Лише фольга ${t.whole(foil)}`,
      coat: ({ foil, part, mix }) =>
        `${t.capital(mixName(mix))} ${part === "roots" ? "на корені" : "на довжині й кінцях"} фольги ${t.whole(foil)}`,
    },
    ofPlan: ({ date, plan, what }) => (plan ? `${date}, ${plan}: ${what}` : `${date}: ${what}`),
    problem: readingProblems(t),
  },
  learnt: learntWords(t, kinds),
  picture: {
    name: "Очікувані й зважені грами; список нижче каже те саме цифрами",
    axis: "г зважено",
    legend:
      "Угору: очікувані грами, смуга — чотири рази з п’яти. Уздовж: зважені грами. На похилій лінії вони збігаються. Точки враховано, хрестики виглядають хибними, кільця не враховано.",
  },
  rows: {
    count: (count) =>
      t.count(count, {
        one: "# зважування",
        few: "# зважування",
        many: "# зважувань",
        other: "# зважування",
      }),
    doubted: "Зважування, що виглядають хибними",
    looksWrong: ({ name, weighedG, expectedG }) =>
      `${name}: зважено ${t.number(weighedG)}\u00a0г; за іншими мало б бути близько ${t.grams(expectedG)}. Перевірте або не враховуйте.`,
    figures: ({ weighedG, expectedG }) =>
      `зважено ${t.number(weighedG)}\u00a0г, очікувано ${t.grams(expectedG)}`,
    counts: "Враховано",
    remove: "Прибрати",
    removeThis: ({ name }) => `Прибрати: ${name}`,
  },
  start: {
    take: "Почати з цифр інших салонів, JSON",
    leave: "Почати з галузевих цифр",
    from: ({ salons }) =>
      t.count(salons, {
        one: "Початок — з об’єднаних цифр # салону. Ваші власні миски звужують їхні діапазони.",
        other: "Початок — з об’єднаних цифр # салонів. Ваші власні миски звужують їхні діапазони.",
      }),
  },
  list: {
    add: "Додати список, CSV",
    save: "Зберегти список, CSV",
    backToStart: "До початкових цифр",
    countAll: "Врахувати всі зважування",
    line: ({ file, line }) => `${file}, рядок ${t.whole(line)}`,
    problem: listProblems(t),
    doubtful: ({ line, weighedG, expectedG }) =>
      `Рядок ${t.whole(line)} виглядає хибним: зважено ${t.number(weighedG, 1)}\u00a0г; за іншими мало б бути близько ${t.number(expectedG, 1)}\u00a0г. Перевірте або не враховуйте.`,
  },
})

const readingProblems = (t: Tools): WeighingWords["bowl"]["problem"] => {
  const said = ({ beforeG, afterG }: ReadingProblem) =>
    `${t.number(beforeG, 1)}\u00a0г до і ${t.number(afterG, 1)}\u00a0г після`
  return {
    "not-read": (read) => `${said(read)}: введіть обидва показники в грамах, з тією самою мискою й пензлем.`,
    gained: (read) => `${said(read)}: після миска важить більше, ніж до. Показники переплутано?`,
    "nothing-placed": (read) => `${said(read)}: нічого не використано. Не враховуйте цю миску.`,
  }
}

const learntWords = (t: Tools, kinds: CommonWords["kinds"]): WeighingWords["learnt"] => {
  const { share, probability } = calibrationFigures.trust
  const target = `у межах ${t.percent(share)}, ${t.number(10 * probability)} разів із 10`
  const stands = ({ withinShare }: { withinShare: number }) =>
    `Середня цифра відхиляється від правди в межах ${t.percent(withinShare)}, 9 разів із 10.`
  return {
    trust: {
      "no-agreement":
        "Ці зважування недостатньо узгоджені, щоб сказати, наскільки хибною може бути середня цифра.",
      trusted: (trust) => `${stands(trust)} На неї можна покладатися.`,
      "more-needed": (trust) =>
        `${stands(trust)} Щоб вона була ${target}, потрібно ще ${t.count(trust.more, {
          one: "# таке зважування",
          few: "# такі зважування",
          many: "# таких зважувань",
          other: "# такого зважування",
        })}.`,
      "too-many-needed": (trust) => `${stands(trust)} Жодна кількість таких зважувань не дасть ${target}.`,
    },
    byStart: "Доти план користується початковими цифрами, які є припущеннями.",
    byWeighings: (learnt) =>
      `План користується вивченим: ${t.and(
        learnt.map(
          ({ product, kind, weighings }) =>
            `${[product, kind && kinds[kind]].filter(Boolean).join(", ") || "усі зважування"} (зважено ${t.whole(weighings)})`,
        ),
      )}.`,
    figure: "Цифра",
    start: "На початку",
    weighed: "За вагами",
    names: {
      lossG: "Втрата на фольгу",
      soakGPerG: "Вбирає грам волосся",
      coatMgPerCm2: "Покриває см² волосся",
    },
    grams: ({ low, mid, high }) => `${t.number(mid)}\u00a0г (від ${t.number(low)} до ${t.number(high)})`,
    milligrams: ({ low, mid, high }) =>
      `${t.number(mid)}\u00a0мг (від ${t.number(low)} до ${t.number(high)})`,
  }
}

const listProblems = (t: Tools): WeighingWords["list"]["problem"] => {
  const columns = `очікуються стовпці ${neededColumns.join(",")} (і foils, якщо рядок — миска на кілька фольг)`
  const at = ({ line, column }: { line: number; column: string }) => `Рядок ${t.whole(line)}, ${column}`
  const found = (cell: { found: string }) => (cell.found === "" ? "порожньо" : `є "${cell.found}"`)
  return {
    "file-too-large": ({ mostMb }) =>
      `Список зважувань має не більше ніж ${t.whole(mostMb)}\u00a0МБ. Це інший файл?`,
    "header-empty": `Рядок 1 порожній: ${columns}.`,
    "header-separator": ({ separator }) =>
      separator === "tabs"
        ? "Рядок 1: стовпці розділено табуляцією. Збережіть список із комами між стовпцями та крапками в числах, 4.5."
        : "Рядок 1: стовпці розділено крапкою з комою. Збережіть список із комами між стовпцями та крапками в числах, 4.5.",
    "columns-missing": ({ columns: missing }) => `Рядок 1: бракує ${t.and(missing)}; ${columns}.`,
    "column-unknown": ({ column }) => `Рядок 1: "${column}" — зайвий стовпець; ${columns}.`,
    cells: ({ line, cells, columns: expected }) =>
      `Рядок ${t.whole(line)}: значень ${t.whole(cells)}, стовпців ${t.whole(expected)}. Якщо в числах коми, пишіть крапки: 4.5 замість 4,5.`,
    "decimal-comma": (cell) => `${at(cell)}: ${found(cell)}; пишіть крапку, ${cell.write}.`,
    "no-number": (cell) => `${at(cell)}: очікується число, ${found(cell)}.`,
    negative: (cell) =>
      `${at(cell)}: очікується 0 або більше, ${found(cell)}. Зважте знову або не враховуйте рядок.`,
    "nothing-used": (cell) =>
      `${at(cell)}: очікуються грами понад 0, ${found(cell)}. Не враховуйте рядок, якщо нічого не використано.`,
    "not-whole": (cell) => `${at(cell)}: очікується ціле число від 1, ${found(cell)}.`,
    "too-large": (cell) => `${at(cell)}: очікується не більше ніж ${t.whole(cell.most)}, ${found(cell)}.`,
    "more-slips": ({ count }) =>
      count === 1 ? "І ще одна така помилка." : `І ще таких помилок: ${t.whole(count)}.`,
  }
}
