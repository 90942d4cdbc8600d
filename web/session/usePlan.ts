import { useStore } from "zustand"
import { type History, redoLabel, undoLabel } from "../core/document/history"
import type { Plan } from "../core/document/schema"
import { planStore } from "./planStore"
import { type Session, sessionStore } from "./sessionStore"
import { type Done, doneWords } from "./words"

/** The only bridge from the plain stores to React. */

export const usePlan = <T>(part: (plan: Plan) => T): T => useStore(planStore, ({ present }) => part(present))

export const useSession = <T>(part: (session: Session) => T): T => useStore(sessionStore, part)

const useHistory = <T>(part: (history: History<Plan, Done>) => T): T => useStore(planStore, part)

/** What undo and redo would do, in the words of the menu; null when there is nothing. */
export const useUndoLabel = () => useDone(undoLabel)
export const useRedoLabel = () => useDone(redoLabel)

/** Said by whoever is drawn once the words have come. */
function useDone(part: (history: History<Plan, Done>) => Done | null): string | null {
  const done = useHistory(part)
  return done === null ? null : doneWords(done)
}
