import { useState } from "react"
import { newCard } from "../../core/cards/card"
import { mostNamesMb, type ReadNames, readNames } from "../../core/cards/namesFile"
import { newId } from "../../core/document/newId"
import { useWords } from "../../session/words"
import { browserShelf } from "../../storage/browserShelf"
import { addCards } from "../../storage/cards"
import { OpenFileButton } from "../fields/OpenFileButton"
import type { CardsOnScreen } from "./useCards"

const megabyte = 1024 * 1024

/** Names from a spreadsheet: what a file holds is told first, and made into cards by a second touch. */
export function ImportNames({ cards }: { cards: CardsOnScreen }) {
  const w = useWords().cards.import
  const [read, setRead] = useState<ReadNames | null>(null)
  const look = async (file: File) => {
    setRead(null)
    cards.setFault("")
    if (file.size > mostNamesMb * megabyte) return cards.setFault(w.tooLarge(mostNamesMb))
    setRead(readNames(await file.text(), cards.rows))
  }
  const take = async ({ clients }: ReadNames) => {
    const made = clients.map(({ name, phone, note }) => ({ ...newCard(newId(), name), phone, note }))
    const outcome = await cards.attempt(async () => {
      await addCards(browserShelf, made)
      return true
    })
    if (outcome) setRead(null)
  }
  return (
    <section className="import-names">
      <OpenFileButton
        words={w.open}
        name={w.file}
        accept=".csv,.txt,text/csv,text/plain"
        onOpen={(file) => void look(file)}
      />
      <p className="aside">{w.how}</p>
      <div role="status">
        {read && (
          <>
            <p>{w.told(foundIn(read, w))}</p>
            {read.clients.length > 0 && (
              <button type="button" className="button strong" onClick={() => void take(read)}>
                {w.take(read.clients.length)}
              </button>
            )}
          </>
        )}
      </div>
    </section>
  )
}

const foundIn = (
  { clients, known, empty, unfit, left }: ReadNames,
  w: ReturnType<typeof useWords>["cards"]["import"],
) => [
  w.found(clients.length),
  ...(known > 0 ? [w.known(known)] : []),
  ...(empty > 0 ? [w.empty(empty)] : []),
  ...(unfit.length > 0 ? [w.unfit(unfit.slice(0, 20))] : []),
  ...(left > 0 ? [w.left(left)] : []),
]
