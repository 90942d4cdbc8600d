import { useStore } from "zustand"
import { useShallow } from "zustand/react/shallow"
import type { Chair } from "../../core/chair/chair"
import { type ChairState, chairStore } from "./chairStore"

/** What is read from the chair must be plain words, numbers or a flat list of them: then a second repaints little. */
export const useChair = <T>(part: (state: ChairState) => T): T => useStore(chairStore, useShallow(part))

/** A part of the running service; null while there is none. */
export const useService = <T>(part: (chair: Chair) => T): T | null =>
  useChair(({ live }) => (live ? part(live.chair) : null))
