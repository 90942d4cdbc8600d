import { problemAt } from "../checks/problem"
import type { Problem } from "../fields/problem"
import type { Backup } from "../file/backup"
import { readDocument } from "../file/readDocument"
import type { ClientCard } from "./card"
import { openCard, writeCard } from "./cardFile"
import { cardKind, cardVersion } from "./cardSchema"

/** All that is kept of one client: the card, and the texts of the plans that are on it. */
export type ClientExport = { madeAt: string; card: ClientCard; plans: readonly string[] }

const clientDocument = { name: "client", kind: "partline-client", version: 1, mostMb: 500 } as const
export const clientKind = clientDocument.kind

/** One client as a file to be handed over: everything as it is kept, readable by anyone who has it. A plan that cannot be read goes as it was written. */
export const writeClient = ({ madeAt, card, plans }: ClientExport): string =>
  `${JSON.stringify(
    {
      kind: clientDocument.kind,
      version: clientDocument.version,
      madeAt,
      card: { kind: cardKind, version: cardVersion, ...card },
      plans: plans.map(asWritten),
    },
    null,
    1,
  )}\n`

function asWritten(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}

export type OpenedClient = { ok: true; client: ClientExport } | { ok: false; problem: Problem }

/** The file of a client as it can be looked through; each plan in it still has to pass its own door. */
export function openClient(text: string): OpenedClient {
  const read = readDocument(text, clientDocument)
  if (!read.ok) return read
  const { madeAt, card, plans } = read.raw as Record<string, unknown>
  if (!Array.isArray(plans))
    return { ok: false, problem: problemAt([], { code: "not-json", document: "client" }) }
  const opened = openCard(JSON.stringify(card ?? null))
  if (!opened.ok) return opened
  return {
    ok: true,
    client: {
      madeAt: typeof madeAt === "string" && !Number.isNaN(Date.parse(madeAt)) ? madeAt : longAgo,
      card: opened.card,
      plans: plans.map((plan) => (typeof plan === "string" ? plan : JSON.stringify(plan))),
    },
  }
}

const longAgo = new Date(0).toISOString()

/** One client as a backup would hold it: the card, its plans, and that they belong together. */
export function clientAsBackup({ madeAt, card, plans }: ClientExport): Backup {
  const written = writeCard(card)
  return {
    madeAt,
    plans: plans.map((text) => ({ savedAt: madeAt, text })),
    techniques: [],
    cards: written.ok ? [written.text] : [],
    visits: plans.flatMap((text) => {
      const planId = planIdIn(text)
      return planId === null ? [] : [{ planId, cardId: card.id }]
    }),
    salon: null,
  }
}

/** What a plan calls itself, also where it cannot be opened. */
export function planIdIn(text: string): string | null {
  const raw = asWritten(text)
  const id = typeof raw === "object" && raw !== null && "id" in raw ? raw.id : null
  return typeof id === "string" && id !== "" ? id : null
}
