import type { MinuteField } from "../../../core/mixing/productSheet"
import type { FormulaWords } from "../../en/formula/formula"
import type { Tools } from "../../tools"

type SheetWords = FormulaWords["productSheets"]

/** What is printed on a tub, typed in field by field. */
export const productSheets = (t: Tools): SheetWords => ({
  title: "Ваші картки засобів",
  saved: "Збережені картки засобів",
  add: "Додати картку засобу",
  fromInvented: "або почати з вигаданої",
  chooseOne: "Вибрати",

  name: "Назва на упаковці",
  kind: "Вид засобу",
  kinds: {
    lightener: "Освітлювач",
    "oxidative-toner": "Тонер з окислювачем",
    "root-shade": "Відтінок для кореня",
    "direct-toner": "Тонер без окислювача",
  },
  form: "Форма",
  forms: { powder: "Пудра", clay: "Глина", cream: "Крем", liquid: "Рідина" },
  ratio: "Частин окислювача на 1 засобу, за вагою",
  thickest: "Найгустіша",
  thinnest: "Найрідша",
  parts: "частин",

  developers: "Дозволені окислювачі",
  volume: ({ volume, percent }) => `${t.number(volume)}\u00a0vol, ${t.number(percent)}\u00a0%`,
  addVolume: (volume) => `Додати ${t.number(volume)}\u00a0vol`,
  removeVolume: (volume) => `Прибрати ${t.number(volume)}\u00a0vol`,
  otherVolume: "або інший",
  liftsFrom: "Освітлює від",
  liftsTo: "до",

  longest: "Максимальний час",
  potLife: "Придатність суміші",
  firstCheck: "Перша перевірка",
  onScalp: "Дозволено на шкіру голови?",
  patchTest: "Виробник вимагає шкірного тесту?",
  heat: "Тепло дозволено?",
  heatMost: "Тепло, не довше",
  answers: { yes: "Так", no: "Ні", silent: "Не вказано" },

  additives: "Дозволені добавки",
  additiveName: "Назва",
  additiveGrams: "На грам засобу",
  replaces: "Замість окислювача?",
  addAdditive: "Додати добавку",
  removeAdditive: "Прибрати",

  price: "Ціна",
  priceFor: "за",

  beforeSaving: "Перш ніж зберегти",
  save: "Зберегти картку засобу",
  cancel: "Скасувати",
  remove: "Прибрати картку засобу",
  nameTaken: ({ name }) => `Картка засобу «${name}» уже є. Відкрийте її.`,
  problem: sheetProblemWords(t),
})

const minuteNames: Record<MinuteField, string> = {
  longestMin: "Максимальний час",
  heatMin: "Тепло",
  potLifeMin: "Придатність суміші",
}

const sheetProblemWords = (t: Tools): SheetWords["problem"] => {
  const ratio = ({ low, high }: { low: number; high: number }) =>
    `від 1 : ${t.number(low)} до 1 : ${t.number(high)}`
  return {
    "no-name": "Назва: у засобу її немає. Введіть те, що на упаковці.",
    "no-ratio":
      "Пропорція: не введено. Введіть частини окислювача на 1 частину засобу, наприклад від 1,5 до 2,5.",
    "ratio-impossible": (said) =>
      `Пропорція: ${ratio(said)} — так не змішують. Введіть частини окислювача на 1 частину засобу, наприклад від 1,5 до 2,5.`,
    "ratio-backwards": (said) =>
      `Пропорція: ${ratio(said)} — навпаки. Введіть спочатку густішу суміш: від ${t.number(said.high)} до ${t.number(said.low)}.`,
    "ratio-upside-down": (said) =>
      `Пропорція: ${ratio(said)} — засобу більше, ніж окислювача. Якщо на упаковці 1 : ${t.number(1 / said.high)}, введіть ${t.number(1 / said.high)}.`,
    "no-developers":
      "Окислювачі: жодного не введено. Додайте кожну силу, яку дозволяє картка, наприклад 10, 20 і 30 vol.",
    "developer-twice": ({ volume }) =>
      `Окислювачі: ${t.number(volume)}\u00a0vol указано двічі. Приберіть один.`,
    "developer-impossible": ({ volume, mostVolume, mostPercent }) =>
      `Окислювачі: ${t.number(volume)}\u00a0vol не буває. Введіть від 1 до ${t.number(mostVolume)}\u00a0vol: не більше ніж ${t.number(mostPercent)}\u00a0% у ЄС і Великій Британії.`,
    "lift-impossible": ({ volume, low, high, mostLevels }) =>
      `Окислювачі: рівні від ${t.number(low)} до ${t.number(high)} для ${t.number(volume)}\u00a0vol — не освітлення. Введіть спочатку меншу цифру, від 0 до ${t.number(mostLevels)}, або залиште обидва поля порожніми.`,
    "lift-falls": ({ volume, weakerVolume }) =>
      `Окислювачі: ${t.number(volume)}\u00a0vol освітлює менше, ніж ${t.number(weakerVolume)}\u00a0vol. Звірте обидва з упаковкою.`,
    "minutes-impossible": ({ field, minutes, least, most }) =>
      `${minuteNames[field]}: ${t.number(minutes)}\u00a0хв бути не може. Введіть від ${t.whole(least)} до ${t.whole(most)} або залиште порожнім, якщо в картці не вказано.`,
    "heat-past-longest": "Тепло: довше за максимальний час. Звірте обидва з упаковкою.",
    "additive-no-name": "Добавки: одна без назви. Введіть те, що на флаконі, або приберіть її.",
    "additive-grams": ({ name, gPerG }) =>
      name
        ? `Добавки: ${t.number(gPerG)}\u00a0г «${name}» на 1 г засобу. Введіть від 0 до 1 г.`
        : `Добавки: ${t.number(gPerG)}\u00a0г на 1 г засобу. Введіть від 0 до 1 г.`,
    "price-impossible": "Ціна: введіть суму від 0 і скільки грамів за неї, або залиште порожнім.",
  }
}
