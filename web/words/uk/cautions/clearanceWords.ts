import type { CautionsWords } from "../../en/cautions/cautions"
import type { Tools } from "../../tools"

type ClearanceWords = CautionsWords["clearance"]
type Told = Parameters<ClearanceWords["pill"]>[0]

/** The three states of a plan: do not mix, not asked yet, cleared. */
export function clearanceWords(t: Tools): ClearanceWords {
  const stops = (count: number) =>
    `Не змішувати: ${t.count(count, { one: "# заборона", few: "# заборони", many: "# заборон", other: "# заборони" })}`
  const notAsked = (count: number) => `Ще не запитано: ${t.whole(count)}`
  const clearedBy = ({ by, day }: Told) => {
    const things = t.and([
      t.count(by.answers, {
        one: "# відповідь",
        few: "# відповіді",
        many: "# відповідей",
        other: "# відповіді",
      }),
      ...(by.tests > 0
        ? [
            t.count(by.tests, {
              one: "# шкірний тест без реакції",
              few: "# шкірні тести без реакції",
              many: "# шкірних тестів без реакції",
              other: "# шкірного тесту без реакції",
            }),
          ]
        : []),
      ...(by.letters > 0
        ? [
            t.count(by.letters, {
              one: "# лист лікаря",
              few: "# листи лікаря",
              many: "# листів лікаря",
              other: "# листа лікаря",
            }),
          ]
        : []),
      ...(by.overrides > 0
        ? [
            t.count(by.overrides, {
              one: "# обхід заборони",
              few: "# обходи заборон",
              many: "# обходів заборон",
              other: "# обходу заборони",
            }),
          ]
        : []),
    ])
    return by.askedBy.trim() === ""
      ? `Допущено ${t.date(day)}; підстави: ${things}.`
      : `Допущено ${t.date(day)} (запитано: ${by.askedBy}); підстави: ${things}.`
  }
  return {
    pill: (told) =>
      told.state === "stop"
        ? stops(told.stops.length)
        : told.state === "not-asked"
          ? notAsked(told.notAsked.length)
          : "Допущено сьогодні",
    head: (told) =>
      told.state === "stop"
        ? `${stops(told.stops.length)}.`
        : told.state === "not-asked"
          ? `${notAsked(told.notAsked.length)}.`
          : clearedBy(told),
    sentence: (told) =>
      told.state === "stop"
        ? t.count(told.stops.length, {
            one: "НЕ ЗМІШУВАТИ: план утримує # заборона.",
            few: "НЕ ЗМІШУВАТИ: план утримують # заборони.",
            many: "НЕ ЗМІШУВАТИ: план утримують # заборон.",
            other: "НЕ ЗМІШУВАТИ: план утримують # заборони.",
          })
        : told.state === "not-asked"
          ? `БЕЗ ДОПУСКУ: ще не запитано — ${t.whole(told.notAsked.length)}.`
          : clearedBy(told),
    list: "Чого бракує",
    stopsTitle: "Не змішувати",
    notAskedTitle: "Ще не запитано",
    none: "На сьогодні нічого не бракує.",
    goTo: "Перейти",
    close: "Закрити",
    aloud: {
      title: "Запитано вголос",
      aside: (count) =>
        t.count(count, {
          one: "На # запитання можна відповісти «ні», поставивши його вголос. Ваше ім’я зберігається з відповіддю.",
          few: "На # запитання можна відповісти «ні», поставивши їх уголос. Ваше ім’я зберігається з відповідями.",
          many: "На # запитань можна відповісти «ні», поставивши їх уголос. Ваше ім’я зберігається з відповідями.",
          other:
            "На # запитання можна відповісти «ні», поставивши їх уголос. Ваше ім’я зберігається з відповідями.",
        }),
      by: "Ваше ім’я",
      sign: "Запитано вголос: ні на все це",
      wanting: "Спочатку введіть своє ім’я.",
    },
    chairStop: "Не змішувати. Спочатку розв’яжіть заборони.",
    chairNotAsked: "Запитайте це до запуску годинника.",
    chairHeld: (piece) =>
      `З’явилася заборона. Не починайте ${{ foil: "нової фольги", panel: "нової панелі", both: "нової фольги чи панелі" }[piece]} й не змішуйте нової миски. Що накладено, перевіряйте й змивайте.`,
    chairOpen: (piece) =>
      `Знову є відкрите питання. Не починайте ${{ foil: "нової фольги", panel: "нової панелі", both: "нової фольги чи панелі" }[piece]} й не змішуйте нової миски, доки на нього немає відповіді. Що накладено, перевіряйте й змивайте.`,
  }
}
