import type { FormulaWords } from "../../en/formula/formula"
import type { Tools } from "../../tools"

/** What the visit will be asked for, in the salon's own money. */
export const quote = (t: Tools): FormulaWords["quote"] => {
  const hours = (minutes: number) => {
    const whole = Math.round(minutes / 5) * 5
    return whole < 60
      ? t.minutes(whole)
      : `${t.whole(Math.floor(whole / 60))}\u00a0год ${t.minutes(whole % 60)}`
  }
  return {
    title: "Кошторис",
    inTheChair: ({ low, high }) =>
      `У кріслі від ${hours(low)} до ${hours(high)}, від першого проділу до сухого волосся.`,
    noPrices: "Введіть свої ціни нижче, у «Ваш салон».",
    total: "Усього",
    noPrice: "без ціни",
    money: ({ low, high }) => t.spread(t.fixed(low, 2), t.fixed(high, 2)),
    line: {
      placement: () => "Розміщення",
      foil: ({ high }) => `Фольги, ${t.whole(high)}`,
      extraBowl: ({ high }) => `Додаткові миски, ${t.whole(high)}`,
      toner: ({ high }) => `Тонери, ${t.whole(high)}`,
      chairHour: ({ low, high }) => `Години в кріслі, ${t.spread(t.number(low, 1), t.number(high, 1))}`,
    },
    price: {
      placement: "Розміщення, разово",
      foil: "Кожна фольга",
      extraBowl: "Кожна миска після першої",
      toner: "Кожен тонер",
      chairHour: "Кожна година в кріслі",
    },
  }
}
