import type { ClientCard } from "../core/cards/card"
import type { CardVisit } from "../core/cards/cardList"
import { allAtOnce, allOrNothing } from "./allOrNothing"
import { cardRecord, entryOfCard, type KeptCard } from "./cards"
import { NotKeptError } from "./notKept"
import type { ShelfEntry, VisitRecord } from "./records"
import type { Shelf } from "./shelf"

const writing = { durability: "strict" } as const

/** The visits of all cards. A plan that was deleted is none until it is put back. */
export async function listVisits({ connection }: Shelf): Promise<CardVisit[]> {
  const [visits, entries] = await connection.run((database) =>
    Promise.all([database.getAll("visits"), database.getAll("entries")]),
  )
  const known = new Map(entries.map((entry) => [entry.id, entry]))
  return visits.flatMap((visit) => visitOf(visit, known.get(visit.planId)))
}

/** The visits of one card. */
export async function visitsOf({ connection }: Shelf, cardId: string): Promise<CardVisit[]> {
  return connection.run(async (database) => {
    const visits = await database.getAllFromIndex("visits", "card", cardId)
    const entries = await Promise.all(visits.map(({ planId }) => database.get("entries", planId)))
    return visits.flatMap((visit, i) => visitOf(visit, entries[i]))
  })
}

const visitOf = ({ planId, cardId }: VisitRecord, entry: ShelfEntry | undefined): CardVisit[] =>
  entry
    ? [
        {
          planId,
          cardId,
          name: entry.name,
          day: entry.day ?? null,
          served: entry.served,
          upkeepWeeks: entry.upkeepWeeks ?? null,
        },
      ]
    : []

/** The card a plan belongs to; null where it belongs to none. */
export async function cardOfPlan({ connection }: Shelf, planId: string): Promise<string | null> {
  return (await connection.run((database) => database.get("visits", planId)))?.cardId ?? null
}

/** From now on a plan belongs to this card, or to none. A card that is gone takes none. */
export const putOnCard = ({ connection }: Shelf, planId: string, cardId: string | null) =>
  connection.run((database) => {
    const transaction = database.transaction(["visits", "cards"], "readwrite", writing)
    const visits = transaction.objectStore("visits")
    return allOrNothing(transaction, async () => {
      if (cardId === null) return visits.delete(planId)
      const [card] = await allAtOnce(
        () => transaction.objectStore("cards").getKey(cardId),
        () => visits.put({ planId, cardId }),
      )
      if (card === undefined) throw new NotKeptError({ code: "card-changed-elsewhere" })
    })
  })

/** A plan made of another is of the same client. */
export async function putOnSameCard(shelf: Shelf, planId: string, like: string) {
  const cardId = await cardOfPlan(shelf, like)
  if (cardId !== null) await putOnCard(shelf, planId, cardId)
}

/** Takes a card away for good; its plans stay and belong to no card. */
export const removeCard = ({ connection }: Shelf, cardId: string) =>
  connection.run((database) => {
    const transaction = database.transaction(["cards", "cardEntries", "visits"], "readwrite", writing)
    return allOrNothing(transaction, async () => {
      const [plans] = await allAtOnce(
        () => transaction.objectStore("visits").index("card").getAllKeys(cardId),
        () => transaction.objectStore("cards").delete(cardId),
        () => transaction.objectStore("cardEntries").delete(cardId),
      )
      await Promise.all(plans.map((planId) => transaction.objectStore("visits").delete(planId)))
    })
  })

/** Writes one card for two: `merged` in place of the first, whose plans it keeps with those of the other, which goes. */
export async function keepMerged({ connection }: Shelf, merged: ClientCard, kept: KeptCard, other: KeptCard) {
  const record = cardRecord(merged)
  await connection.run((database) => {
    const transaction = database.transaction(["cards", "cardEntries", "visits"], "readwrite", writing)
    const cards = transaction.objectStore("cards")
    return allOrNothing(transaction, async () => {
      const [one, two, visits] = await allAtOnce(
        () => cards.get(kept.card.id),
        () => cards.get(other.card.id),
        () => transaction.objectStore("visits").index("card").getAll(other.card.id),
      )
      if (one?.rev !== kept.rev || two?.rev !== other.rev)
        throw new NotKeptError({ code: "card-changed-elsewhere" })
      await allAtOnce(
        () => cards.put(record),
        () => cards.delete(other.card.id),
        () => transaction.objectStore("cardEntries").put(entryOfCard(merged)),
        () => transaction.objectStore("cardEntries").delete(other.card.id),
        ...visits.map(
          ({ planId }) =>
            () =>
              transaction.objectStore("visits").put({ planId, cardId: merged.id }),
        ),
      )
    })
  })
  return { card: merged, rev: record.rev }
}
