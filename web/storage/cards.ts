import type { ClientCard } from "../core/cards/card"
import { openCard, writeCard } from "../core/cards/cardFile"
import type { CardEntry } from "../core/cards/cardList"
import { newId } from "../core/document/newId"
import type { Problem } from "../core/fields/problem"
import { allAtOnce, allOrNothing } from "./allOrNothing"
import { NotKeptError } from "./notKept"
import type { CardRecord } from "./records"
import type { Shelf } from "./shelf"

const writing = { durability: "strict" } as const

/** A card with the rev it was read or written under: whoever writes it again must know the latest. */
export type KeptCard = { card: ClientCard; rev: string }

export const entryOfCard = ({ id, name, colour, phone }: ClientCard): CardEntry => ({
  id,
  name,
  colour,
  phone,
})

/** A card as it is kept; one that would not be read again is not written. */
export function cardRecord(card: ClientCard): CardRecord {
  const written = writeCard(card)
  if (!written.ok) throw new NotKeptError({ code: "not-in-order", what: "card", problem: written.problem })
  return { id: card.id, rev: newId(), savedAt: new Date().toISOString(), text: written.text }
}

/** What the list of cards shows of each, in no order. */
export const listCards = ({ connection }: Shelf): Promise<CardEntry[]> =>
  connection.run((database) => database.getAll("cardEntries"))

/** A card as it stands, null where there is none, or what keeps it from being read: then it stays as it is. */
export async function readCard(
  { connection }: Shelf,
  id: string,
): Promise<{ ok: true; kept: KeptCard } | { ok: false; problem: Problem } | null> {
  const record = await connection.run((database) => database.get("cards", id))
  if (!record) return null
  const opened = openCard(record.text)
  return opened.ok ? { ok: true, kept: { card: opened.card, rev: record.rev } } : opened
}

/** Writes a card. `rev` is the one it was read under, null of a new one; another window's writing is not written over. */
export async function keepCard(
  { connection }: Shelf,
  card: ClientCard,
  rev: string | null,
): Promise<KeptCard> {
  const record = cardRecord(card)
  await connection.run((database) => {
    const transaction = database.transaction(["cards", "cardEntries"], "readwrite", writing)
    return allOrNothing(transaction, async () => {
      const [stored] = await allAtOnce(
        () => transaction.objectStore("cards").get(card.id),
        () => transaction.objectStore("cards").put(record),
        () => transaction.objectStore("cardEntries").put(entryOfCard(card)),
      )
      if ((stored?.rev ?? null) !== rev) throw new NotKeptError({ code: "card-changed-elsewhere" })
    })
  })
  return { card, rev: record.rev }
}

/** Puts many new cards beside those that are there, all of them or none. */
export const addCards = ({ connection }: Shelf, cards: readonly ClientCard[]) =>
  connection.run((database) => {
    const records = cards.map(cardRecord)
    const transaction = database.transaction(["cards", "cardEntries"], "readwrite", writing)
    return allOrNothing(transaction, () =>
      allAtOnce(
        ...records.map((record) => () => transaction.objectStore("cards").add(record)),
        ...cards.map((card) => () => transaction.objectStore("cardEntries").add(entryOfCard(card))),
      ),
    )
  })
