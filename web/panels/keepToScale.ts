import { announce } from "../plan/announcements"
import { edit, type PlanStore } from "../plan/planStore"
import { readSalon } from "../plan/salonShelf"
import type { Shelf } from "../plan/shelf"
import { followScale } from "../service/followScale"

const label = "Go by what the scale has taught"

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
  if (change && edit(label, change, null, store) === null) announce(label)
}
