import type { Range } from "../../../geometry/hair/tradeFigures"
import { isFoil } from "../../../geometry/section/section"
import { newSalon, type PriceName, priceNames } from "../document/salon"
import type { Plan } from "../document/schema"
import { netOf } from "../figures/measured"
import { timedPlan } from "../schedule/timedPlan"
import { mixesOfPlan } from "./mixesOfPlan"
import { tonersOfPlan } from "./toners"

/** One line of a quote: how many of a thing, and what they come to; null where the salon's list has no price. */
export type QuoteLine = { price: PriceName; count: Range; amount: Range | null }

export type Quote = {
  lines: readonly QuoteLine[]
  chairMin: Range
  /** Of the lines that have a price. */
  total: Range
}

/** What the visit will be asked for, in the salon's own money and by its own list; null while it cannot be timed. */
export function quoteOf(plan: Plan): Quote | null {
  const timed = timedPlan(plan)
  if (!timed.ok) return null
  const { prices } = plan.salon ?? newSalon()
  const { chairMin } = timed.schedule
  const hours = { low: chairMin.low / 60, mid: chairMin.mid / 60, high: chairMin.high / 60 }
  const bowls = mixesOfPlan(plan).reduce((sum, { made }) => sum + (made?.bowls.length ?? 0), 0)
  const counts: Record<PriceName, Range> = {
    placement: always(1),
    foil: always(plan.sections.filter(isFoil).reduce((sum, foil) => sum + netOf(foil, plan).foils, 0)),
    extraBowl: always(Math.max(0, bowls - 1)),
    toner: always(tonersOfPlan(plan).length),
    chairHour: hours,
  }
  const lines = priceNames
    .filter((price) => counts[price].high > 0)
    .map((price) => ({ price, count: counts[price], amount: amountOf(prices[price], counts[price]) }))
  return { lines, chairMin, total: sumOf(lines) }
}

const always = (count: number): Range => ({ low: count, mid: count, high: count })

const amountOf = (price: number | null, { low, mid, high }: Range): Range | null =>
  price === null ? null : { low: price * low, mid: price * mid, high: price * high }

function sumOf(lines: readonly QuoteLine[]): Range {
  const at = (end: keyof Range) => lines.reduce((sum, { amount }) => sum + (amount?.[end] ?? 0), 0)
  return { low: at("low"), mid: at("mid"), high: at("high") }
}
