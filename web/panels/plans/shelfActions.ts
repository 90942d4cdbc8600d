import { problemAt } from "../../core/checks/problem"
import type { Edit } from "../../core/document/edit"
import { copyOf } from "../../core/document/newPlan"
import type { Plan } from "../../core/document/schema"
import { setPlanDetails } from "../../core/edits/plan/setPlanDetails"
import { nameWithin } from "../../core/fields/nameWithin"
import type { NotKept } from "../../core/fields/notKept"
import { mostPlanMb, type Opened, openPlan } from "../../core/file/planFile"
import { announce } from "../../session/announcements"
import { commit } from "../../session/commit"
import { edit, openInto, type PlanStore, planStore } from "../../session/planStore"
import { freshPlan as freshPlanOf } from "../../session/salon/freshPlan"
import { type Done, doneWords, words } from "../../session/words"
import { removePlan } from "../../storage/bin"
import { browserShelf } from "../../storage/browserShelf"
import { type Kept, keepPlan, openKept, type Shelf, takeIn } from "../../storage/shelf"
import { keepSetting, listPlans, noteOpened, renamePlan } from "../../storage/shelfList"

/** What the plan on the screen and the plans on the shelf do to each other. */
export type Desk = { store: PlanStore; shelf: Shelf }

export const desk: Desk = { store: planStore, shelf: browserShelf }

const mostBytes = 20 * 1024 * 1024

/** Puts a plan of the shelf on the screen; one that cannot be read leaves the screen as it was. */
export async function openFromShelf({ store, shelf }: Desk, id: string): Promise<Opened> {
  const opened = await openKept(shelf, id)
  if (opened.ok) {
    openInto(opened.plan, store)
    // A full disk keeps no plan from being opened.
    await noteOpened(shelf, id).catch(() => {})
  }
  return opened
}

/** Puts a plan from a file on the screen and on the shelf; a file with problems changes neither. */
export async function openFromFile({ store, shelf }: Desk, file: Blob): Promise<Opened> {
  const opened = file.size > mostBytes ? tooLarge(file) : openPlan(await file.text())
  if (!opened.ok) return opened
  // Without a shelf the plan still opens; autosave says that it is not kept.
  const taken = await takeIn(shelf, opened.plan).catch(() => opened)
  openInto(taken.plan, store)
  return { ok: true, plan: taken.plan }
}

const tooLarge = ({ size }: Blob): Opened => ({
  ok: false,
  problems: [
    problemAt([], {
      code: "too-large",
      document: "plan",
      mostMb: mostPlanMb,
      foundMb: Math.round(size / 1024 / 1024),
    }),
  ],
})

/**
 * Puts a plan on the shelf beside the one on the screen, and then changes that one, which stays where it is. Nothing is
 * changed before the other plan is on the disk.
 */
export async function putBeside(
  desk: Desk,
  plan: Plan,
  beside: Plan,
  { label, change }: { label: Done; change: Edit },
): Promise<{ ok: true; plan: Plan } | { ok: false; why: NotKept }> {
  const { plan: put, kept } = await takeIn(desk.shelf, beside)
  if (kept.state !== "saved") return { ok: false, why: kept.why }
  const { present } = desk.store.getState()
  await keepAsLast(desk)
  if (present.id === plan.id && edit(label, change, null, desk.store) === null) announce(doneWords(label))
  return { ok: true, plan: put }
}

/** Puts a copy beside a plan of the shelf, and the copy on the screen once it is on the disk. */
export async function duplicate(desk: Desk, id: string): Promise<Kept> {
  const opened = await openKept(desk.shelf, id)
  if (!opened.ok) return { state: "not-saved", why: { code: "unreadable", problem: opened.problems[0] } }
  const copy = { ...copyOf(opened.plan), name: copyName(opened.plan.name) }
  const kept = await keepPlan(desk.shelf, copy)
  if (kept.state === "saved") await openFromShelf(desk, copy.id)
  else await keepAsLast(desk)
  return kept
}

/** The name with "copy" after it. */
export const copyName = (name: string): string => nameWithin(name, words().plans.list.copyOf)

/** Gives a plan another name: by an edit when it is on the screen, else on the shelf. */
export async function rename(desk: Desk, id: string, name: string): Promise<Kept> {
  if (desk.store.getState().present.id === id) {
    commit({ chapter: "plans", code: "rename" }, setPlanDetails({ name }))
    return { state: "saved" }
  }
  const kept = await renamePlan(desk.shelf, id, name)
  await keepAsLast(desk)
  return kept
}

/** Takes a plan off the shelf, and gives the way to put it back. The screen moves on to the next plan, or a new one. */
export async function remove(desk: Desk, id: string): Promise<() => Promise<void>> {
  const wasOpen = desk.store.getState().present.id === id
  const putBack = await removePlan(desk.shelf, id)
  if (wasOpen) await openNext(desk)
  return async () => {
    await putBack()
    if (wasOpen) await openFromShelf(desk, id)
  }
}

async function openNext(desk: Desk) {
  const [next] = await listPlans(desk.shelf)
  const opened = next && (await openFromShelf(desk, next.id))
  if (!opened?.ok) openInto(await freshPlan(desk), desk.store)
}

/** An empty plan that goes by what the salon keeps. */
export const freshPlan = ({ shelf }: Desk): Promise<Plan> => freshPlanOf(shelf)

/** Reading and writing another plan made it the last one; the one on the screen is. */
const keepAsLast = ({ store, shelf }: Desk) => keepSetting(shelf, "lastPlan", store.getState().present.id)

export const planTitle = ({ name }: Pick<Plan, "name">) => name.trim() || words().plans.untitled
