import type { ClientCard } from "../core/cards/card"
import { openCard } from "../core/cards/cardFile"
import { isGroup } from "../core/checks/problem"
import { newId } from "../core/document/newId"
import { copyOf } from "../core/document/newPlan"
import type { Backup } from "../core/file/backup"
import { openPlan } from "../core/file/planFile"
import { openTechnique } from "../core/file/techniqueFile"
import { allAtOnce, allOrNothing } from "./allOrNothing"
import { cardRecord, entryOfCard } from "./cards"
import { entryOf, isRecord, toRecord } from "./planRecord"
import type { CardRecord, PlanRecord, TechniqueRecord, VisitRecord } from "./records"
import type { Shelf } from "./shelf"

/** What a backup is made of, as it stands on the shelf now. A service that runs at a chair is not in it. */
export async function partsForBackup({ connection }: Shelf): Promise<Omit<Backup, "madeAt">> {
  const [plans, techniques, cards, visits, salon] = await connection.run((database) =>
    Promise.all([
      database.getAll("plans"),
      database.getAll("techniques"),
      database.getAll("cards"),
      database.getAll("visits"),
      database.get("settings", "salon"),
    ]),
  )
  return {
    plans: plans.filter(isRecord).map(({ savedAt, text }) => ({ savedAt, text })),
    techniques: techniques.map(({ text }) => text),
    cards: cards.map(({ text }) => text),
    visits,
    salon: salon ?? null,
  }
}

/** What taking a backup in would change here: nothing that stands on the shelf is replaced. */
export type Restoring = {
  added: readonly PlanRecord[]
  /** Plans that stand here otherwise: they come beside, under an id of their own. */
  beside: readonly PlanRecord[]
  /** Plans that are here already, just so. */
  same: number
  /** Plans that cannot be read: set aside as they are. */
  unread: readonly PlanRecord[]
  techniques: readonly TechniqueRecord[]
  /** Cards that are not here, or stand here otherwise: those come beside, under an id of their own. */
  cards: readonly ClientCard[]
  visits: readonly VisitRecord[]
}

/** How much of each there is, for whoever asks before it is taken in. */
export const countsOf = ({ added, beside, same, unread, techniques, cards }: Restoring) => ({
  added: added.length,
  beside: beside.length,
  same,
  unread: unread.length,
  techniques: techniques.length,
  cards: cards.length,
})

/** Holds a backup against what stands on the shelf. */
export async function compareBackup({ connection }: Shelf, backup: Backup): Promise<Restoring> {
  const [records, techniques, cards, visits] = await connection.run((database) =>
    Promise.all([
      database.getAll("plans"),
      database.getAll("techniques"),
      database.getAll("cards"),
      database.getAll("visits"),
    ]),
  )
  const here = new Map(records.filter(isRecord).map((record) => [record.id, record.text]))
  const found = { added: [] as PlanRecord[], beside: [] as PlanRecord[], same: 0, unread: [] as PlanRecord[] }
  /** What a plan of the backup goes by here. */
  const planIds = new Map<string, string>()
  for (const { savedAt, text } of backup.plans) {
    const opened = openPlan(text, () => [])
    if (!opened.ok) {
      const record = asWritten(text, savedAt)
      found.unread.push(record)
      // Whose it is stays known: it goes when the client is erased.
      planIds.set(record.id, record.id)
      continue
    }
    const record = { ...toRecord(opened.plan), savedAt }
    const stands = here.get(record.id)
    if (stands === record.text) found.same += 1
    else if (stands === undefined) found.added.push(record)
    else found.beside.push({ ...toRecord(copyOf(opened.plan)), savedAt })
    const isBeside = stands !== undefined && stands !== record.text
    planIds.set(record.id, isBeside ? (found.beside.at(-1)?.id ?? record.id) : record.id)
    here.set(record.id, stands ?? record.text)
  }
  const { made, unread, cardIds } = newCards(backup.cards, cards)
  const linked = new Set(visits.map(({ planId }) => planId))
  return {
    ...found,
    unread: [...found.unread, ...unread],
    techniques: newTechniques(backup.techniques, techniques),
    cards: made,
    visits: backup.visits.flatMap((visit) => {
      const [planId, cardId] = [planIds.get(visit.planId), cardIds.get(visit.cardId)]
      return planId === undefined || cardId === undefined || linked.has(planId) ? [] : [{ planId, cardId }]
    }),
  }
}

/** The cards that are not here just so, and what each card of the backup goes by here. */
function newCards(texts: readonly string[], here: readonly CardRecord[]) {
  const known = new Map(here.map(({ id, text }) => [id, text]))
  const cardIds = new Map<string, string>()
  const [made, unread]: [ClientCard[], PlanRecord[]] = [[], []]
  for (const text of texts) {
    const opened = openCard(text)
    if (!opened.ok) {
      unread.push(asWritten(text, new Date(0).toISOString()))
      continue
    }
    const { card } = opened
    const stands = known.get(card.id)
    const id = stands === undefined || stands === text ? card.id : newId()
    cardIds.set(card.id, id)
    if (stands !== text) made.push({ ...card, id })
  }
  return { made, unread, cardIds }
}

/** A plan that cannot be read, as far as it can be: a newer Partline may read it by what it calls itself. */
function asWritten(text: string, savedAt: string): PlanRecord {
  const { id, name } = fieldsOf(text)
  const named = (value: unknown) => (typeof value === "string" ? value : "")
  return { id: named(id) || newId(), rev: newId(), savedAt, name: named(name), initials: "", text }
}

function fieldsOf(text: string): Record<PropertyKey, unknown> {
  try {
    const raw: unknown = JSON.parse(text)
    return isGroup(raw) ? raw : {}
  } catch {
    return {}
  }
}

/** The techniques that are not here just so; one that stands here otherwise comes beside it. */
function newTechniques(texts: readonly string[], here: readonly TechniqueRecord[]): TechniqueRecord[] {
  const known = new Map(here.map(({ id, text }) => [id, text]))
  return texts.flatMap((text) => {
    const opened = openTechnique(text)
    if (!opened.ok || known.get(opened.technique.id) === text) return []
    const { id } = opened.technique
    const own = known.has(id) ? newId() : id
    return [{ id: own, text: own === id ? text : text.replace(JSON.stringify(id), JSON.stringify(own)) }]
  })
}

/** Puts all of it on the shelf, or nothing of it. */
export const takeInBackup = (
  { connection }: Shelf,
  { added, beside, unread, techniques, cards, visits }: Restoring,
) =>
  connection.run(async (database) => {
    const transaction = database.transaction(
      ["plans", "entries", "aside", "techniques", "cards", "cardEntries", "visits"],
      "readwrite",
      { durability: "strict" },
    )
    const store = transaction.objectStore.bind(transaction)
    await allOrNothing(transaction, () =>
      allAtOnce(
        ...[...added, ...beside].flatMap((record) => [
          // Another window may have brought it meanwhile: then nothing is taken in.
          () => store("plans").add(record),
          () => store("entries").add(entryOf(record)),
        ]),
        ...unread.map((record) => () => store("aside").put(record, `${record.id} ${newId()}`)),
        ...techniques.map((record) => () => store("techniques").add(record)),
        ...cards.flatMap((card) => [
          () => store("cards").add(cardRecord(card)),
          () => store("cardEntries").add(entryOfCard(card)),
        ]),
        ...visits.map((visit) => () => store("visits").add(visit)),
      ),
    )
  })
