import { createStore } from "zustand/vanilla"
import type { Section } from "../../geometry/section/section"

/** The stack that is being chosen: its rows as they are made when asked for, how many are shown, and how to ask for others. */
export type StackInHand = {
  rows(count: number): readonly Section[]
  /** Two where each row is a pair. */
  sides: 1 | 2
  /** Shown now: asked for, and there is room for them. */
  shown: number
  most: number
  ask(count: number): void
}

/** Where the panel of a stack and its handle on the map meet. */
export const stackStore = createStore<{ stack: StackInHand | null }>(() => ({ stack: null }))
