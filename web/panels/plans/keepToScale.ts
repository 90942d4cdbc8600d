import { followScale } from "../../core/weighing/followScale"
import { announce } from "../../session/announcements"
import { edit, type PlanStore } from "../../session/planStore"
import { readSalon } from "../../session/salon/salonShelf"
import { type Done, doneWords, wordsHere } from "../../session/words"
import type { Shelf } from "../../storage/shelf"

const label: Done = { chapter: "plans", code: "follow-scale" }

/** Brings each plan that comes to the screen to what the scale has taught by now, as one change that can be undone. */
export function keepToScale(store: PlanStore, shelf: Shelf) {
  void keepThis(store, shelf)
  return store.subscribe(({ present }, before) => {
    if (present.id !== before.present.id) void keepThis(store, shelf)
  })
}

async function keepThis(store: PlanStore, shelf: Shelf) {
  const { id } = store.getState().present
  const salon = await readSalon(shelf)
  const { present } = store.getState()
  const change = present.id === id ? followScale(present, salon) : null
  if (!change || edit(label, change, null, store) !== null) return
  await wordsHere()
  announce(doneWords(label))
}
