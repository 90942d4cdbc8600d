import type { quote as english } from "../../en/formula/quote"

/** What the visit will be asked for, in the salon's own money. */
export const quote: typeof english = (t) => {
  const hours = (minutes: number) => {
    const whole = Math.round(minutes / 5) * 5
    return whole < 60 ? t.minutes(whole) : `${t.whole(Math.floor(whole / 60))} h ${t.minutes(whole % 60)}`
  }
  return {
    title: "Angebot",
    inTheChair: ({ low, high }) =>
      `Am Stuhl ${hours(low)} bis ${hours(high)}, vom ersten Scheitel bis zum trockenen Haar.`,
    noPrices: "Ihre Preise unten unter „Ihr Salon“ eingeben.",
    total: "Gesamt",
    noPrice: "kein Preis",
    money: ({ low, high }) => t.spread(t.fixed(low, 2), t.fixed(high, 2)),
    line: {
      placement: () => "Platzierung",
      foil: ({ high }) => `Folien, ${t.whole(high)}`,
      extraBowl: ({ high }) => `Weitere Schalen, ${t.whole(high)}`,
      toner: ({ high }) => `Toner, ${t.whole(high)}`,
      chairHour: ({ low, high }) => `Stunden am Stuhl, ${t.spread(t.number(low, 1), t.number(high, 1))}`,
    },
    price: {
      placement: "Platzierung, einmal",
      foil: "Jede Folie",
      extraBowl: "Jede Schale nach der ersten",
      toner: "Jeder Toner",
      chairHour: "Jede Stunde am Stuhl",
    },
  }
}
