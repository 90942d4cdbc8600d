import type { Plan } from "../../../core/document/schema"
import type { Names } from "../../en/sheets/names"
import type { SheetsWords } from "../../en/sheets/sheets"
import type { Tools } from "../../tools"

type MapWords = SheetsWords["map"]

/** The placement and formula map. */
export const map = (t: Tools, common: Names): MapWords => ({
  about: "Схема розміщення й формули",
  aboutMirror: "Схема розміщення й формули, перед як у дзеркалі",
  /** The usual parting and the crown swirl, where either is known. */
  worn,

  alerts: { stop: "БЕЗ ДОПУСКУ: НЕ ЗМІШУВАТИ", notAsked: "БЕЗ ДОПУСКУ: про здоров’я не запитано" },

  tests: { strand: "Тест на пасмі зроблено:", patch: "Шкірний тест без реакції, дата:" },

  bowls: {
    title: "Миски, за верхньою цифрою",
    doneTitle: "Миски, як змішано",
  },
  toner: { title: "Тонер, після змивання" },
  working: {
    title: "Секції голови, за порядком",
    row: ({ name, foils, productG, placeMin }) =>
      [
        `${name}: ${common.foils(foils)}`,
        t.gramsRange(productG),
        ...(placeMin ? [`${t.spread(t.whole(placeMin.low), t.whole(placeMin.high))}\u00a0хв`] : []),
      ].join("; "),
    noFoils: (names) => `${names.join(", ")}: без фольг`,
    crossing: (names) => `У двох секціях: ${t.and(names)}`,
  },
  painted: {
    title: "Мальовані панелі, масштаб 1 : 10",
    of: ({ widthMm, lengthMm, share }) =>
      `${t.mm(widthMm)} × ${t.mm(lengthMm)}, замальовано ${t.percent(share)}`,
    key: "Від краю: м’яко, середньо, повно.",
  },
  ruler: {
    title: "Товщина, 1:1",
    check: ["50 мм; якщо ні —", "друкувати 100 %"],
    depth: (mm) => t.mm(mm, 1),
    foils: common.foils,
    foilCount: common.foilCount,
    starts: "Початок засобу, 1:1",
    /** Where lightened hair may begin, off the scalp. */
    notPast: ({ low, high }) => `освітлено від ${t.spread(t.whole(low), t.mm(high))}: далі лінії без засобу`,
    stitches: "Стібок/проміжок, мм, 1:1",
    stitch: ({ stitchMm, gapMm, dipMm }) => `${half(t, stitchMm)}/${half(t, gapMm)}, гл. ${half(t, dipMm)}`,
    scale: "50 мм на голові, у кожному виді",
  },
  table: table(t, common),
  clock: clock(t),
})

/** Halves are kept, since a slice is one to three millimetres deep. */
const half = (t: Tools, mm: number) => t.number(Math.round(mm * 2) / 2, 1)

const table = (t: Tools, common: Names): MapWords["table"] => ({
  heads: {
    order: ["Пор."],
    number: ["№"],
    side: ["Бік"],
    kind: ["Вид"],
    foils: ["Фольг"],
    lengthMm: ["Довж.", "мм"],
    depthMm: ["Товщ.", "мм"],
    direction: ["Проділ"],
    start: ["Поч.", "мм"],
    hairG: ["Вол.", "г"],
    lowG: ["мін."],
    midG: ["сер."],
    highG: ["макс."],
    mix: ["Сум."],
    on: ["Накл."],
    off: ["Зняти"],
  },
  product: "Засіб, г",
  sides: { left: "лів.", right: "прав.", centre: "центр" },
  kinds: { slice: "Слайс", weave: "Штопка", backcomb: "Начіс", painted: "Мальована" },
  half: (mm) => half(t, mm),
  direction: (direction) =>
    direction.name === "parallel to hairline" ? "паралельно" : common.direction(direction),
  start: (startMm, { from, to }) => {
    const start = from > 0 ? t.percent(from) : half(t, startMm)
    return to < 1 ? `${start} – ${t.percent(to)}` : start
  },
  carriers: { board: "планшет", "open-air": "відкр.", film: "плівка" },
  leftOut: (name) => (name ? `Залишено: ${name}` : "Залишено"),
  total: ({ foils, piece, areaCm2, hairs }) =>
    `${common.foilCount(foils, piece)}, ${t.area(areaCm2)} шкіри, ${t.spread(t.hairs(hairs.low), t.hairs(hairs.high))} волосин`,
  takenTwice: (less) => `${less}; на схемі заштриховано навхрест.`,
  arrows:
    "Засіб іде від свого початку (мм від шкіри голови) до кінців, якщо рядок не каже іншого. Стрілки: на схемі — як лежить фольга, тут — як спадає проділ, якщо дивитися на цей бік.",
})

const clock = (t: Tools): MapWords["clock"] => ({
  title: "Годинник, хвилини від першого проділу",
  heads: { number: "№", on: "Від", ready: "Готово", off: "Межа" },
  key: "Смуга: час витримки, штриховка як у суміші. Біле: може бути готово. Жирна риска: максимальний час. Пунктир: перевірка. Трикутник: змішати ту миску. Це план, а не обіцянка: перевіряти й знімати те, що готове.",
  rest: ({ who, fromMin, toMin }) => `${resting[who]} від хвилини ${t.whole(fromMin)} до ${t.whole(toMin)}.`,
  heat: ({ fromMin, toMin }) =>
    `Тепло від хвилини ${t.whole(fromMin)} до ${t.whole(toMin)}: потім вимкнути, перевірити, охолодити.`,
  readyOpen: (low) => `${t.whole(low)}–?`,
})

const resting = {
  all: "Перерва",
  colourist: "Перерва колориста",
  assistant: "Перерва асистента",
}

const worn = ({ wornParting, whorl }: Pick<Plan["head"], "wornParting" | "whorl">) =>
  [
    ...(wornParting
      ? [wornParting.kind === "side" ? sides[wornParting.side] : partings[wornParting.kind]]
      : []),
    ...(whorl ? [whorls[whorl.turns]] : []),
  ].join(", ")

const partings = { centre: "проділ посередині", zigzag: "проділ зигзагом", none: "без звичного проділу" }
const sides = { left: "проділ ліворуч", right: "проділ праворуч" }
const whorls = {
  clockwise: "вихор за годинниковою стрілкою",
  anticlockwise: "вихор проти годинникової стрілки",
  none: "без вихору маківки",
}
