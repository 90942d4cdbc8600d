import { useCallback, useEffect, useState } from "react"
import type { Problem } from "../../core/fields/problem"
import type { Opened } from "../../core/file/planFile"
import { notKeptWords } from "../../session/words"
import { type Aside, listAside, retryAside } from "../../storage/aside"
import { listBin, putBack } from "../../storage/bin"
import { whyNotKept } from "../../storage/notKept"
import type { BinEntry, PlanRecord, ShelfEntry } from "../../storage/records"
import type { Kept } from "../../storage/shelf"
import { listPlans, lookAtPlans } from "../../storage/shelfList"
import { type Desk, duplicate, openFromFile, openFromShelf, remove, rename } from "./shelfActions"

export type ShelfOnScreen = {
  entries: readonly ShelfEntry[]
  /** The list has been read: before that nobody says that there are none. */
  isRead: boolean
  /** Plans that were deleted. */
  bin: readonly BinEntry[]
  /** Plans that could not be read, as they were written. */
  aside: readonly Aside[]
  /** All that can be done with a shelf that is not to be written in: null where it can. */
  readOnly: readonly PlanRecord[] | null
  /** What keeps the last file or plan from being opened. */
  problems: readonly Problem[]
  /** Why the shelf did not do what was asked. */
  fault: string
  /** The plan taken off last, and the way to put it back. */
  removed: { title: string; putBack: () => void } | null
  /** Each gives whether its plan is on the screen now. */
  openFile(file: File): Promise<boolean>
  open(id: string): Promise<boolean>
  duplicate(id: string): Promise<boolean>
  rename(id: string, name: string): void
  remove(id: string, title: string): Promise<void>
  putBack(id: string): void
  retryAside(): void
  /** Reads the lists again: the shelf was changed by other means. */
  readAgain(): void
}

type Lists = Pick<ShelfOnScreen, "entries" | "bin" | "aside" | "readOnly" | "isRead">

const nothingRead: Lists = { entries: [], bin: [], aside: [], readOnly: null, isRead: false }

async function readLists({ shelf }: Desk): Promise<Lists> {
  const [entries, bin, aside] = await Promise.all([listPlans(shelf), listBin(shelf), listAside(shelf)])
  return { entries, bin, aside, readOnly: null, isRead: true }
}

/** The shelf as the screen shows it; every action reads it again. */
export function useShelf(desk: Desk): ShelfOnScreen {
  const [lists, setLists] = useState(nothingRead)
  const [problems, setProblems] = useState<readonly Problem[]>([])
  const [fault, setFault] = useState("")
  const [removed, setRemoved] = useState<ShelfOnScreen["removed"]>(null)

  const orFault = useCallback(
    <T>(work: Promise<T>): Promise<T | null> =>
      work.catch((error) => {
        setFault(notKeptWords(whyNotKept(error)))
        return null
      }),
    [],
  )
  const readAgain = useCallback(async () => {
    const read = await orFault(readLists(desk))
    if (read) return setLists(read)
    const readOnly = await lookAtPlans(desk.shelf).catch(() => null)
    setLists({ ...nothingRead, readOnly })
  }, [desk, orFault])
  useEffect(() => void readAgain(), [readAgain])

  const attempt = async <T>(work: Promise<T>): Promise<T | null> => {
    setFault("")
    setProblems([])
    const outcome = await orFault(work)
    await readAgain()
    return outcome
  }
  const opening = async (work: Promise<Opened>) => {
    const opened = await attempt(work)
    if (opened && !opened.ok) setProblems(opened.problems)
    return opened?.ok ?? false
  }
  const keeping = async (work: Promise<Kept>) => {
    const kept = await attempt(work)
    if (kept?.state === "not-saved") setFault(notKeptWords(kept.why))
    return kept?.state === "saved"
  }
  const removing = async (id: string, title: string) => {
    const putBack = await attempt(remove(desk, id))
    if (putBack) setRemoved({ title, putBack: () => void attempt(putBack()).then(() => setRemoved(null)) })
  }
  return {
    ...lists,
    problems,
    fault,
    removed,
    openFile: (file) => opening(openFromFile(desk, file)),
    open: (id) => opening(openFromShelf(desk, id)),
    rename: (id, name) => void keeping(rename(desk, id, name)),
    duplicate: (id) => keeping(duplicate(desk, id)),
    remove: removing,
    putBack: (id) => void attempt(putBack(desk.shelf, id)),
    retryAside: () => void attempt(retryAside(desk.shelf)),
    readAgain: () => void readAgain(),
  }
}
