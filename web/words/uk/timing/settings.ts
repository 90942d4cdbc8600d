import type { TimingWords } from "../../en/timing/timing"
import type { Tools } from "../../tools"
import { pieceAsObject, pieces } from "../common/pieces"

/** How the visit goes: one line that says it, and the fields that change it. */
export const settings = (t: Tools): TimingWords["settings"] => {
  const pace = {
    expert: "Темп майстра",
    usual: "Звичайний темп",
    learner: "Темп учня",
    learnt: "Виміряний темп",
  }
  return {
    title: "Як іде візит",
    change: "Змінити",
    close: "Закрити",
    line: (now) =>
      `${[
        pace[now.pace],
        now.people === 1 ? "один колорист" : "колорист і асистент",
        now.rinse === "each" ? `кожну ${pieceAsObject(now.piece)} знімати, коли готова` : "усе змити разом",
        ...(now.heatMin === null ? [] : [`${t.minutes(now.heatMin)} тепла`]),
        ...(now.breaks === 0
          ? []
          : [
              t.count(now.breaks, {
                one: "# перерва",
                few: "# перерви",
                many: "# перерв",
                other: "# перерви",
              }),
            ]),
        ...(now.isDried ? [] : ["без сушіння"]),
        now.bookingMin === null ? "тривалість запису не вказано" : `у записі ${t.minutes(now.bookingMin)}`,
      ].join(", ")}.`,

    pace: "Темп",
    paceOption: ({ name, low, high }) =>
      `${pace[name]}, ${t.spread(t.number(low, 1), t.number(high, 1))}\u00a0хв на фольгу`,

    working: "Хто працює",
    alone: "Один колорист",
    two: "Колорист і асистент",
    who: "Колорист",
    assistant: "Асистент",
    assistantSide: "Бік асистента",
    sides: { left: "Лівий бік клієнта", right: "Правий бік клієнта" },

    off: (piece) => `${t.capital(pieces(t).word(2, piece))} знімають`,
    each: "Кожну, коли готова",
    together: "Усі в одне змивання",

    lift: "Освітлення",
    asAsked: "За консультацією з клієнтом",
    notSet: "Не вказано",
    levels: "Від рівня до рівня",
    fromTo: ({ from, to }) => `Від рівня ${t.number(from)} до ${t.number(to)}`,
    levelNow: "Рівень зараз",
    target: "Цільовий рівень",

    appointment: "Тривалість запису",
    inMinutes: "Хвилини в кріслі",
    booked: "Хвилини в записі",
    drying: "Сушіння",
    dried: "У кріслі",
    damp: "Без нього",

    heat: "Тепло, якщо дозволяє інструкція виробника",
    noHeat: "Немає",
    minutes: (minutes) => t.minutes(minutes),
    temperature: "Температура, якщо виміряно",

    breaks: "Перерви",
    fromMin: "Від хвилини",
    toMin: "До хвилини",
    whoRests: "Хто відпочиває",
    rests: { both: "Перерва обох", "1": "Перерва колориста", "2": "Перерва асистента" },
    addBreak: "Додати перерву",
    removeBreak: "Прибрати",
  }
}
