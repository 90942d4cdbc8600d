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
    title: "Devis",
    inTheChair: ({ low, high }: Range) =>
      `Au fauteuil de ${hours(low)} à ${hours(high)}, de la première séparation aux cheveux secs.`,
    noPrices: "Saisissez vos prix sous « Votre salon » ci-dessous.",
    total: "En tout",
    noPrice: "sans prix",
    money: ({ low, high }: Range) => t.spread(t.fixed(low, 2), t.fixed(high, 2)),
    /** A line of the quote with how many of it. */
    line: {
      placement: () => "Placement",
      foil: ({ high }) => `Papillotes, ${t.whole(high)}`,
      extraBowl: ({ high }) => `Bols en plus, ${t.whole(high)}`,
      toner: ({ high }) => `Patines, ${t.whole(high)}`,
      chairHour: ({ low, high }) => `Heures au fauteuil, ${t.spread(t.number(low, 1), t.number(high, 1))}`,
    } satisfies Record<PriceName, (count: Range) => string>,
    /** What a price is asked for, each. */
    price: {
      placement: "Placement, une fois",
      foil: "Chaque papillote",
      extraBowl: "Chaque bol après le premier",
      toner: "Chaque patine",
      chairHour: "Chaque heure au fauteuil",
    } satisfies Record<PriceName, string>,
  }
}
