/** A document's past, present and future. Documents never change, so undo is a list of them. */
export type History<T> = {
  past: readonly Entry<T>[]
  present: T
  future: readonly Entry<T>[]
  /** Commits with the same key join into one, until something else happens. */
  key: string | null
}
/** A change by the words of the menu, and the document on the other side of it. */
export type Entry<T> = { label: string; document: T }

const mostSteps = 300

export const startHistory = <T>(present: T): History<T> => ({ past: [], present, future: [], key: null })

export function commit<T>(
  history: History<T>,
  label: string,
  present: T,
  key: string | null = null,
): History<T> {
  if (present === history.present) return history
  const joins = key !== null && key === history.key
  const past = joins
    ? history.past
    : [...history.past, { label, document: history.present }].slice(-mostSteps)
  return { past, present, future: [], key }
}

export function undo<T>({ past, present, future }: History<T>): History<T> {
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

export function redo<T>({ past, present, future }: History<T>): History<T> {
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

/** What undo would take back and redo bring again, in the words of the menu. */
export const undoLabel = (history: History<unknown>) => history.past.at(-1)?.label ?? null
export const redoLabel = (history: History<unknown>) => history.future[0]?.label ?? null
