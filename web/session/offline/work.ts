import { chairStore, isRunning } from "../chair/chairStore"
import { draftStore } from "../draftStore"
import { saveStatus } from "../saveStatus"
import { sessionStore } from "../sessionStore"

/** At the chair, or while a service goes on under another screen: nobody is asked about the app then. */
export const isAtChair = () => sessionStore.getState().screen === "chair" || isRunning(chairStore.getState())

/** Whether a reload of this window would take something away or stand in the way of a hand. */
export function isAtWork(): boolean {
  const { state } = saveStatus.getState()
  return isAtChair() || state === "saving" || state === "not-saved"
}

/** Calls after each change of what is done in this window. Gives the way to stop. */
export function watchWork(onChange: () => void): () => void {
  const stops = [sessionStore, chairStore, saveStatus].map((store) => store.subscribe(onChange))
  return () => {
    for (const stop of stops) stop()
  }
}

/** Runs the work once no stroke is in hand: what it shows may change the size of the page. */
export function onceHandIsUp(work: () => void) {
  const isUp = () => draftStore.getState().draft === null && draftStore.getState().box === null
  if (isUp()) return work()
  const stop = draftStore.subscribe(() => {
    if (!isUp()) return
    stop()
    work()
  })
}
