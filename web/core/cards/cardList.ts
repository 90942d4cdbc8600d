import { returnWeeks } from "../../../presets/sheets/aftercare"
import type { Days } from "../record/returnDates"
import { dayAfter } from "../text/dayAfter"
import { plainLetters } from "../text/plainLetters"
import type { CardColour } from "./card"

/** What a list of cards shows of each. */
export type CardEntry = { id: string; name: string; colour: CardColour; phone: string }

/** A plan that belongs to a card, as far as a list tells it. A day of null: nobody knows. */
export type CardVisit = {
  planId: string
  cardId: string
  name: string
  day: string | null
  /** A service was carried out. */
  served: boolean
  /** How often the client wants to come back; null where nobody asked. */
  upkeepWeeks: number | null
}

/** What a card is found by: its name in plain letters, and the figures of its telephone number. */
export type Sought = { name: string; digits: string }

/** A card in the list, with when its client was here and is to come. */
export type CardRow = CardEntry & {
  sought: Sought
  visits: number
  lastDay: string | null
  /** The latest day of any plan on it, carried out or not. */
  latestDay: string | null
  due: Due | null
}

/** When the client comes: a visit that is planned, or when what was done last is due again. */
export type Due = { planned: true; day: string } | ({ planned: false } & Days)

export const digitsOf = (text: string) => text.replace(/\D/g, "")

/** The rows of a list of cards on a day of the calendar. */
export function cardRows(
  entries: readonly CardEntry[],
  visits: readonly CardVisit[],
  today: string,
): CardRow[] {
  const byCard = new Map<string, CardVisit[]>()
  for (const visit of visits) {
    const own = byCard.get(visit.cardId)
    if (own) own.push(visit)
    else byCard.set(visit.cardId, [visit])
  }
  return entries.map((entry) => {
    const own = byCard.get(entry.id) ?? []
    return {
      ...entry,
      sought: { name: plainLetters(entry.name), digits: digitsOf(entry.phone) },
      visits: own.length,
      lastDay: lastDone(own)?.day ?? null,
      latestDay: inOrder(own)[0]?.day ?? null,
      due: dueOf(own, today),
    }
  })
}

/** The visits of a card, the latest first; those without a day last. */
export const inOrder = (visits: readonly CardVisit[]): CardVisit[] =>
  visits.toSorted((a, b) => (b.day ?? "").localeCompare(a.day ?? "") || a.planId.localeCompare(b.planId))

/** The latest visit at which a service was carried out. */
export const lastDone = (visits: readonly CardVisit[]): CardVisit | undefined =>
  inOrder(visits).find(({ served, day }) => served && day !== null)

/** A plan for today or later that was not carried out yet comes before any estimate. */
export function dueOf(visits: readonly CardVisit[], today: string): Due | null {
  const planned = visits
    .flatMap(({ served, day }) => (!served && day !== null && day >= today ? [day] : []))
    .sort()
  if (planned.length > 0) return { planned: true, day: planned[0] }
  const last = lastDone(visits)
  if (!last?.day) return null
  const [least, most] =
    last.upkeepWeeks === null ? returnWeeks.frame.range : [last.upkeepWeeks, last.upkeepWeeks]
  return { planned: false, from: dayAfter(last.day, 7 * least), to: dayAfter(last.day, 7 * most) }
}

export const cardOrders = ["name", "last", "due"] as const
export type CardOrder = (typeof cardOrders)[number]

/** By name, by who was here last, or by who is due first; those of whom nothing is known come after, by name. */
export function sortCards(rows: readonly CardRow[], order: CardOrder, locale: string): CardRow[] {
  const names = new Intl.Collator(locale, { numeric: true }).compare
  const byName = rows.toSorted((a, b) => names(a.name, b.name))
  if (order === "name") return byName
  if (order === "last") return byName.sort((a, b) => (b.lastDay ?? "").localeCompare(a.lastDay ?? ""))
  return byName.sort((a, b) => dueDay(a).localeCompare(dueDay(b)))
}

/** After every day of the calendar. */
const never = "9999"
const dueDay = ({ due }: CardRow) => (due === null ? never : due.planned ? due.day : due.from)
