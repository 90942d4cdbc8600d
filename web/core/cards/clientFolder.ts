import { isGroup } from "../checks/problem"
import { planKind } from "../document/planKind"
import { type Backup, backupKind, readBackup, writeBackup } from "../file/backup"
import { openPlan, savePlan } from "../file/planFile"
import { techniqueKind } from "../file/techniqueSchema"
import { withoutPlans } from "../weighing/withoutPlans"
import type { ClientCard } from "./card"
import { openCard } from "./cardFile"
import { cardKind } from "./cardSchema"
import { clientKind, openClient, planIdIn } from "./clientFile"

/** A file of a folder by its name, as it was read. */
export type FolderFile = { name: string; text: string }

/** What a file tells of clients: cards, plans as texts, and which plan is on which card. */
type Told = {
  file: FolderFile
  madeAt: string
  cards: readonly ClientCard[]
  plans: readonly string[]
  visits: readonly { planId: string; cardId: string }[]
  backup: Backup | null
}

/** A client of a folder: the card as it was written last, every plan on it once, and the files that hold any of it. */
export type FolderClient = {
  card: ClientCard
  planIds: readonly string[]
  plans: readonly string[]
  files: readonly string[]
}

export type ClientFolder = {
  clients: readonly FolderClient[]
  /** Files with plans that belong to nobody. */
  noCard: readonly string[]
  /** Files that hold nothing Partline knows, or hold it damaged: nobody knows whose they are. */
  unread: readonly string[]
}

/** The clients of a folder. No plan names its card: a client's file or a backup says which plans are on it. */
export function readFolder(files: readonly FolderFile[]): ClientFolder {
  const told = files.map(tell)
  const read = told.flatMap((each) => each ?? [])
  const clients = cardsIn(read).map((card) => clientIn(read, card))
  const named = new Set(clients.flatMap((client) => client.files))
  return {
    clients,
    noCard: read.flatMap(({ file, plans }) => (plans.length > 0 && !named.has(file.name) ? [file.name] : [])),
    unread: files.flatMap(({ name }, i) => (told[i] === null ? [name] : [])),
  }
}

/** What is left of a folder without a client: files that go, and backups that stay without them. */
export function folderWithout(files: readonly FolderFile[], { card, planIds, files: of }: FolderClient) {
  const concerned = files.filter(({ name }) => of.includes(name)).flatMap((file) => tell(file) ?? [])
  return {
    removed: concerned.filter(({ backup }) => backup === null).map(({ file }) => file.name),
    rewritten: concerned.flatMap(({ file, backup }) =>
      backup ? [{ name: file.name, text: writeBackup(backupWithout(backup, card.id, planIds)) }] : [],
    ),
  }
}

function backupWithout(backup: Backup, cardId: string, planIds: readonly string[]): Backup {
  const isGone = (text: string) => planIds.includes(planIdIn(text) ?? "")
  const gone = backup.plans.filter(({ text }) => isGone(text))
  return {
    ...backup,
    plans: backup.plans.filter(({ text }) => !isGone(text)),
    cards: backup.cards.filter((text) => cardOf(text)?.id !== cardId),
    visits: backup.visits.filter((visit) => visit.cardId !== cardId && !planIds.includes(visit.planId)),
    salon: withoutPlans(
      backup.salon,
      gone.map(({ text }) => ({ id: planIdIn(text) ?? "", name: nameIn(text) })),
    ),
  }
}

function nameIn(text: string): string {
  const opened = openPlan(text, () => [])
  return opened.ok ? opened.plan.name : ""
}

function clientIn(told: readonly Told[], card: ClientCard): FolderClient {
  const visits = told.flatMap((each) => each.visits).filter(({ cardId }) => cardId === card.id)
  const planIds = [...new Set(visits.map(({ planId }) => planId))]
  const isOwn = (text: string) => planIds.includes(planIdIn(text) ?? "")
  const plans = told.flatMap((each) => each.plans).filter(isOwn)
  return {
    card,
    planIds,
    plans: [...new Map(plans.map((text) => [canonical(text), text])).values()],
    files: told
      .filter((each) => each.cards.some(({ id }) => id === card.id) || each.plans.some(isOwn))
      .map(({ file }) => file.name),
  }
}

/** The same plan written by another hand is the same plan. */
function canonical(text: string): string {
  const opened = openPlan(text, () => [])
  return opened.ok ? savePlan(opened.plan) : text
}

/** Each card once, as the latest file has it. */
function cardsIn(told: readonly Told[]): ClientCard[] {
  const inTime = told.toSorted((a, b) => a.madeAt.localeCompare(b.madeAt))
  return [...new Map(inTime.flatMap(({ cards }) => cards).map((card) => [card.id, card])).values()]
}

/** A card by itself is taken for the latest: it says no day. */
const now = "9999"
const nothing = { madeAt: now, cards: [], plans: [], visits: [], backup: null }

function tell(file: FolderFile): Told | null {
  const { text } = file
  switch (kindIn(text)) {
    case planKind:
      return planIdIn(text) === null ? null : { ...nothing, file, plans: [text] }
    case cardKind: {
      const card = cardOf(text)
      return card && { ...nothing, file, cards: [card] }
    }
    case clientKind: {
      const opened = openClient(text)
      if (!opened.ok) return null
      const { madeAt, card, plans } = opened.client
      const ids = plans.flatMap((plan) => planIdIn(plan) ?? [])
      const visits = ids.map((planId) => ({ planId, cardId: card.id }))
      return { file, madeAt, cards: [card], plans, visits, backup: null }
    }
    case backupKind: {
      const read = readBackup(text)
      if (!read.ok) return null
      const { madeAt, plans, cards, visits } = read.backup
      return {
        file,
        madeAt,
        cards: cards.flatMap((each) => cardOf(each) ?? []),
        plans: plans.map((plan) => plan.text),
        visits,
        backup: read.backup,
      }
    }
    case techniqueKind:
      return { ...nothing, file }
    default:
      return null
  }
}

function cardOf(text: string): ClientCard | null {
  const opened = openCard(text)
  return opened.ok ? opened.card : null
}

function kindIn(text: string): unknown {
  try {
    const raw: unknown = JSON.parse(text.replace(/^\uFEFF/, ""))
    return isGroup(raw) ? raw.kind : null
  } catch {
    return null
  }
}
