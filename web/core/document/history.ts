/** A document's past, present and future. Documents never change, so undo is a list of them. */
export type History<T, L = string> = {
  past: readonly Entry<T, L>[]
  present: T
  future: readonly Entry<T, L>[]
  /** Commits with the same key join into one, until something else happens. */
  key: string | null
}
/** What a change is called, which the words of the screen tell in their own way, and the document on the other side of it. */
export type Entry<T, L> = { label: L; document: T }

const mostSteps = 300

export const startHistory = <T, L = string>(present: T): History<T, L> => ({
  past: [],
  present,
  future: [],
  key: null,
})

export function commit<T, L>(
  history: History<T, L>,
  label: L,
  present: T,
  key: string | null = null,
): History<T, L> {
  if (present === history.present) return history
  const joins = key !== null && key === history.key
  const past = joins
    ? history.past
    : [...history.past, { label, document: history.present }].slice(-mostSteps)
  return { past, present, future: [], key }
}

export function undo<T, L>({ past, present, future }: History<T, L>): History<T, L> {
  const last = past.at(-1)
  return last
    ? {
        past: past.slice(0, -1),
        present: last.document,
        future: [{ label: last.label, document: present }, ...future],
        key: null,
      }
    : { past, present, future, key: null }
}

export function redo<T, L>({ past, present, future }: History<T, L>): History<T, L> {
  const [next, ...rest] = future
  return next
    ? {
        past: [...past, { label: next.label, document: present }],
        present: next.document,
        future: rest,
        key: null,
      }
    : { past, present, future, key: null }
}

/** What undo would take back and redo bring again; null when there is nothing. */
export const undoLabel = <L>(history: History<unknown, L>): L | null => history.past.at(-1)?.label ?? null
export const redoLabel = <L>(history: History<unknown, L>): L | null => history.future[0]?.label ?? null
