import { problemsOf } from "../checks/problem"
import type { Problem } from "../fields/problem"
import { readDocument } from "../file/readDocument"
import type { ClientCard } from "./card"
import { cardKind, cardSchema, cardVersion } from "./cardSchema"

export type OpenedCard = { ok: true; card: ClientCard } | { ok: false; problem: Problem }

const cardDocument = { name: "card", kind: cardKind, version: cardVersion, mostMb: 1 } as const

/** The only way into the program for a card: its text gives one to trust, or the first thing that is wrong with it. */
export function openCard(text: string): OpenedCard {
  const read = readDocument(text, cardDocument)
  return read.ok ? check(read.raw) : read
}

/** The text of a card, once it is known that it would be opened again. */
export function writeCard(card: ClientCard): { ok: true; text: string } | { ok: false; problem: Problem } {
  const checked = check({ kind: cardKind, version: cardVersion, ...card })
  if (!checked.ok) return checked
  const text = JSON.stringify({ kind: cardKind, version: cardVersion, ...checked.card }, null, 1)
  return { ok: true, text: `${text}\n` }
}

function check(raw: unknown): OpenedCard {
  const parsed = cardSchema.safeParse(raw)
  if (!parsed.success) return { ok: false, problem: problemsOf(parsed.error.issues[0], raw, "card")[0] }
  const { kind: _, version: __, ...card } = parsed.data
  return { ok: true, card }
}
