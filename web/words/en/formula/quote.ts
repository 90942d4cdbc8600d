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
    title: "Quote",
    inTheChair: ({ low, high }: Range) =>
      `In the chair ${hours(low)} to ${hours(high)}, from the first parting to dry hair.`,
    noPrices: "Enter your prices under “Your salon” below.",
    total: "In all",
    noPrice: "no price",
    money: ({ low, high }: Range) => t.spread(t.fixed(low, 2), t.fixed(high, 2)),
    /** A line of the quote with how many of it. */
    line: {
      placement: () => "Placement",
      foil: ({ high }) => `Foils, ${t.whole(high)}`,
      extraBowl: ({ high }) => `Extra bowls, ${t.whole(high)}`,
      toner: ({ high }) => `Toners, ${t.whole(high)}`,
      chairHour: ({ low, high }) => `Hours in the chair, ${t.spread(t.number(low, 1), t.number(high, 1))}`,
    } satisfies Record<PriceName, (count: Range) => string>,
    /** What a price is asked for, each. */
    price: {
      placement: "Placement, once",
      foil: "Each foil",
      extraBowl: "Each bowl after the first",
      toner: "Each toner",
      chairHour: "Each hour in the chair",
    } satisfies Record<PriceName, string>,
  }
}
