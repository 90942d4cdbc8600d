import { isGroup, problemAt } from "../checks/problem"
import type { Problem } from "../fields/problem"
import { readDocument } from "./readDocument"

/** All plans and techniques of a device as the texts of their files, and what the salon keeps beside them. */
export type Backup = {
  /** ISO 8601. */
  madeAt: string
  plans: readonly { savedAt: string; text: string }[]
  techniques: readonly string[]
  /** The cards of clients as their texts, and which plan is on which of them. */
  cards: readonly string[]
  visits: readonly { planId: string; cardId: string }[]
  salon: unknown
}

const backupDocument = { name: "backup", kind: "partline-backup", version: 1, mostMb: 500 } as const
export const backupKind = backupDocument.kind

/** The text of a backup's file. Nothing in it is locked: it holds every health answer. */
export const writeBackup = (backup: Backup): string =>
  `${JSON.stringify({ kind: backupDocument.kind, version: backupDocument.version, ...backup })}\n`

/** A backup as it can be looked through; what is in it still has to pass the door of its own kind. */
export function readBackup(text: string): { ok: true; backup: Backup } | { ok: false; problem: Problem } {
  const read = readDocument(text, backupDocument)
  if (!read.ok) return read
  const { madeAt, plans, techniques, cards, visits, salon } = read.raw as Record<string, unknown>
  if (!Array.isArray(plans) || !Array.isArray(techniques))
    return { ok: false, problem: problemAt([], { code: "not-json", document: "backup" }) }
  return {
    ok: true,
    backup: {
      madeAt: typeof madeAt === "string" ? madeAt : "",
      plans: plans.map(planIn),
      techniques: techniques.map((each) => (typeof each === "string" ? each : "")),
      // There were none before there were cards.
      cards: Array.isArray(cards)
        ? cards.map((each) => (typeof each === "string" ? each : JSON.stringify(each)))
        : [],
      visits: Array.isArray(visits) ? visits.flatMap(visitIn) : [],
      salon,
    },
  }
}

const visitIn = (value: unknown): Backup["visits"][number][] => {
  const { planId, cardId } = isGroup(value) ? value : {}
  return typeof planId === "string" && typeof cardId === "string" ? [{ planId, cardId }] : []
}

/** What is no plan is kept as it is written, for whoever may read it later. */
function planIn(value: unknown): Backup["plans"][number] {
  const { savedAt, text } = isGroup(value) ? value : {}
  return {
    savedAt:
      typeof savedAt === "string" && !Number.isNaN(Date.parse(savedAt)) ? savedAt : new Date(0).toISOString(),
    text: typeof text === "string" ? text : JSON.stringify(value),
  }
}
