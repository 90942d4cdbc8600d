import { copyOf } from "./core/document/newPlan"
import type { Plan } from "./core/document/schema"
import { announceRefusal } from "./session/announcements"
import { startAutosave } from "./session/autosave"
import { markExample } from "./session/markExample"
import { nowHere } from "./session/nowHere"
import { openInto, type PlanStore, planStore } from "./session/planStore"
import { sessionStore } from "./session/sessionStore"
import { problemWords, words, wordsHere } from "./session/words"
import { retryAside } from "./storage/aside"
import { emptyBin } from "./storage/bin"
import { browserShelf } from "./storage/browserShelf"
import { openLast, type Shelf } from "./storage/shelf"
import { readSetting } from "./storage/shelfList"
import { readService } from "./storage/shelfServices"

/**
 * Puts the last plan on the screen, the finished example on the very first start, and keeps every change from now on.
 * Whoever drew before the shelf had answered keeps what they drew.
 */
export async function startUp(store: PlanStore = planStore, shelf: Shelf = browserShelf): Promise<void> {
  const { present: before, past } = store.getState()
  const isUntouched = () => past.length === 0 && store.getState().present === before
  startAutosave(store, shelf)
  await retryAside(shelf).catch(() => 0)
  const plan = await firstPlan(shelf)
  if (plan && isUntouched()) {
    openInto(plan, store)
    await returnToChair(plan, shelf)
  }
  await rememberExample(shelf)
  const { followCardHere } = await import("./session/cards/cardHere")
  followCardHere(store, shelf)
  const { keepToScale } = await import("./panels/plans/keepToScale")
  keepToScale(store, shelf)
  await emptyBin(shelf, Date.now()).catch(() => {})
}

/** A service that was going on goes on: the chair is the first thing seen after a reload. */
async function returnToChair({ id }: Plan, shelf: Shelf) {
  const service = await readService(shelf, id).catch(() => undefined)
  if (service?.running) sessionStore.setState({ screen: "chair" })
}

/** The finished example, loaded only by those who meet it. */
async function example(shelf: Shelf): Promise<Plan> {
  const plan = copyOf((await import("./core/file/exampleVisit")).exampleVisit(nowHere()))
  await markExample(plan, shelf)
  return plan
}

/** The example of an earlier start is still known as one. */
async function rememberExample(shelf: Shelf) {
  if (sessionStore.getState().exampleId !== null) return
  const exampleId = await readSetting(shelf, "exampleId").catch(() => null)
  if (typeof exampleId === "string") sessionStore.setState({ exampleId })
}

/** The plan to begin with; null for the empty one that is on the screen already. */
async function firstPlan(shelf: Shelf): Promise<Plan | null> {
  try {
    const isFirstStart = (await readSetting(shelf, "lastPlan")) === undefined
    if (isFirstStart) return example(shelf)
    const last = await openLast(shelf)
    if (last.ok) return last.plan
    await wordsHere()
    announceRefusal(words().plans.lastNotOpened(problemWords(last.problems[0])))
    return null
  } catch {
    // No shelf here, as in some private windows: autosave says so once the example is on the screen.
    return example(shelf)
  }
}
