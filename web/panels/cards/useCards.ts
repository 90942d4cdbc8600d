import { useCallback, useEffect, useState } from "react"
import { type CardRow, cardRows } from "../../core/cards/cardList"
import { readCardHere } from "../../session/cards/cardHere"
import { todayHere } from "../../session/cards/nextVisit"
import { notKeptWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { listCards } from "../../storage/cards"
import { listVisits } from "../../storage/cardVisits"
import { whyNotKept } from "../../storage/notKept"

export type CardsOnScreen = {
  rows: readonly CardRow[]
  /** The list has been read: before that nobody says that there are none. */
  isRead: boolean
  /** Why the last touch did nothing. */
  fault: string
  setFault(fault: string): void
  /** Does work and reads the list again; gives what came of it, null where it was not done. */
  attempt<T>(work: () => Promise<T>): Promise<T | null>
}

/** The cards of this browser as the screen shows them. */
export function useCards(): CardsOnScreen {
  const [rows, setRows] = useState<readonly CardRow[]>([])
  const [isRead, setRead] = useState(false)
  const [fault, setFault] = useState("")
  const read = useCallback(async () => {
    const [entries, visits] = await Promise.all([listCards(browserShelf), listVisits(browserShelf)])
    setRows(cardRows(entries, visits, todayHere()))
    setRead(true)
    await readCardHere()
  }, [])
  const told = useCallback((error: unknown) => {
    setFault(notKeptWords(whyNotKept(error, "card")))
    return null
  }, [])
  useEffect(() => void read().catch(told), [read, told])
  const attempt = async <T>(work: () => Promise<T>) => {
    setFault("")
    const outcome = await work().catch(told)
    await read().catch(told)
    return outcome
  }
  return { rows, isRead, fault, setFault, attempt }
}
