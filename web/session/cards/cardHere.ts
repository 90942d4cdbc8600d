import { createStore } from "zustand/vanilla"
import type { ClientCard } from "../../core/cards/card"
import { withStanding } from "../../core/cards/withStanding"
import { browserShelf } from "../../storage/browserShelf"
import { readCard } from "../../storage/cards"
import { cardOfPlan } from "../../storage/cardVisits"
import type { Shelf } from "../../storage/shelf"
import { type PlanStore, planStore } from "../planStore"

/** The card of the plan on the screen, as it was last read; null where it is on none. */
export const cardHere = createStore<{ planId: string; card: ClientCard | null }>(() => ({
  planId: "",
  card: null,
}))

/** Reads which card the plan on the screen is on, and brings what stands there into the plan. */
export async function readCardHere(store: PlanStore = planStore, shelf: Shelf = browserShelf): Promise<void> {
  const { id } = store.getState().present
  const cardId = await cardOfPlan(shelf, id)
  const read = cardId === null ? null : await readCard(shelf, cardId)
  if (store.getState().present.id !== id) return
  cardHere.setState({ planId: id, card: read?.ok ? read.kept.card : null })
  bringStanding(store)
}

/**
 * Whatever is undone or opened, the plan on the screen has the allergies of its card: they are no edit, and no step back
 * goes past them. A plan on no card keeps what it came with.
 */
export function followCardHere(store: PlanStore = planStore, shelf: Shelf = browserShelf): () => void {
  const read = () => void readCardHere(store, shelf).catch(() => {})
  read()
  return store.subscribe(({ present }, before) => {
    if (present.id !== before.present.id) read()
    else bringStanding(store)
  })
}

function bringStanding(store: PlanStore) {
  const { present } = store.getState()
  const { planId, card } = cardHere.getState()
  if (planId !== present.id || !card) return
  const standing = withStanding(present, card.allergies)
  if (standing !== present) store.setState({ present: standing })
}
