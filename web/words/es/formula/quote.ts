import type { Range } from "../../../../geometry/hair/tradeFigures"
import type { PriceName } from "../../../core/document/salon"
import type { Tools } from "../../tools"

/** What the visit will be asked for, in the salon's own money. */
export const quote = (t: Tools) => {
  const hours = (minutes: number) => {
    const whole = Math.round(minutes / 5) * 5
    return whole < 60 ? t.minutes(whole) : `${t.whole(Math.floor(whole / 60))} h ${t.minutes(whole % 60)}`
  }
  return {
    title: "Presupuesto",
    inTheChair: ({ low, high }: Range) =>
      `En el sillón, de ${hours(low)} a ${hours(high)}, desde la primera raya hasta el cabello seco.`,
    noPrices: "Introduzca sus precios en «Su salón», más abajo.",
    total: "En total",
    noPrice: "sin precio",
    money: ({ low, high }: Range) => t.spread(t.fixed(low, 2), t.fixed(high, 2)),
    /** A line of the quote with how many of it. */
    line: {
      placement: () => "Colocación",
      foil: ({ high }) => `Papeles, ${t.whole(high)}`,
      extraBowl: ({ high }) => `Boles extra, ${t.whole(high)}`,
      toner: ({ high }) => `Matizadores, ${t.whole(high)}`,
      chairHour: ({ low, high }) => `Horas en el sillón, ${t.spread(t.number(low, 1), t.number(high, 1))}`,
    } satisfies Record<PriceName, (count: Range) => string>,
    /** What a price is asked for, each. */
    price: {
      placement: "Colocación, una vez",
      foil: "Cada papel",
      extraBowl: "Cada bol tras el primero",
      toner: "Cada matizador",
      chairHour: "Cada hora en el sillón",
    } satisfies Record<PriceName, string>,
  }
}
