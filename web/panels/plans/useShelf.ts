import { useCallback, useEffect, useState } from "react"
import type { Problem } from "../../core/checks/problem"
import type { Opened } from "../../core/file/planFile"
import type { Kept } from "../../storage/shelf"
import { listAside, listPlans, type ShelfEntry } from "../../storage/shelfList"
import { whyNotKept } from "../../storage/shelfWords"
import { type Desk, duplicate, openFromFile, openFromShelf, remove, rename } from "./shelfActions"

export type ShelfOnScreen = {
  entries: readonly ShelfEntry[]
  /** Plans that could not be read, as they were written. */
  aside: readonly unknown[]
  /** What keeps the last file or plan from being opened. */
  problems: readonly Problem[]
  /** Why the shelf did not do what was asked. */
  fault: string
  /** The plan taken off last, and the way to put it back. */
  removed: { title: string; putBack: () => void } | null
  /** Both give whether the plan is on the screen now. */
  openFile(file: File): Promise<boolean>
  open(id: string): Promise<boolean>
  rename(id: string, name: string): void
  duplicate(id: string): void
  remove(id: string, title: string): Promise<void>
}

/** The shelf as the screen shows it; every action reads it again. */
export function useShelf(desk: Desk): ShelfOnScreen {
  const [entries, setEntries] = useState<readonly ShelfEntry[]>([])
  const [aside, setAside] = useState<readonly unknown[]>([])
  const [problems, setProblems] = useState<readonly Problem[]>([])
  const [fault, setFault] = useState("")
  const [removed, setRemoved] = useState<ShelfOnScreen["removed"]>(null)

  const orFault = useCallback(
    <T>(work: Promise<T>): Promise<T | null> =>
      work.catch((error) => {
        setFault(whyNotKept(error))
        return null
      }),
    [],
  )
  const readAgain = useCallback(async () => {
    setEntries(await listPlans(desk.shelf))
    setAside(await listAside(desk.shelf))
  }, [desk])
  useEffect(() => void orFault(readAgain()), [orFault, readAgain])

  const attempt = async <T>(work: Promise<T>): Promise<T | null> => {
    setFault("")
    setProblems([])
    const outcome = await orFault(work)
    await orFault(readAgain())
    return outcome
  }
  const opening = async (work: Promise<Opened>) => {
    const opened = await attempt(work)
    if (opened && !opened.ok) setProblems(opened.problems)
    return opened?.ok ?? false
  }
  const keeping = async (work: Promise<Kept>) => {
    const kept = await attempt(work)
    if (kept?.state === "not-saved") setFault(kept.why)
  }
  const removing = async (id: string, title: string) => {
    const putBack = await attempt(remove(desk, id))
    if (putBack) setRemoved({ title, putBack: () => void attempt(putBack()).then(() => setRemoved(null)) })
  }
  return {
    entries,
    aside,
    problems,
    fault,
    removed,
    openFile: (file) => opening(openFromFile(desk, file)),
    open: (id) => opening(openFromShelf(desk, id)),
    rename: (id, name) => void keeping(rename(desk, id, name)),
    duplicate: (id) => void keeping(duplicate(desk, id)),
    remove: removing,
  }
}
