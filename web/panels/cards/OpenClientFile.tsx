import { useState } from "react"
import type { Problem } from "../../core/fields/problem"
import { lookThroughClient, takeInClient } from "../../session/cards/clientRights"
import { useWords } from "../../session/words"
import { countsOf, type Restoring } from "../../storage/backup"
import { FileProblems } from "../fields/FileProblems"
import { OpenFileButton } from "../fields/OpenFileButton"
import type { CardsOnScreen } from "./useCards"

/** The way back from a client's file: what it would bring is told first, and taken in by a second touch. */
export function OpenClientFile({ cards }: { cards: CardsOnScreen }) {
  const { cards: words, offline } = useWords()
  const w = words.rights
  const [restoring, setRestoring] = useState<Restoring | null>(null)
  const [problem, setProblem] = useState<Problem | null>(null)
  const look = async (file: File) => {
    setRestoring(null)
    setProblem(null)
    const looked = await cards.attempt(() => lookThroughClient(file))
    if (looked?.ok) setRestoring(looked.restoring)
    else if (looked) setProblem(looked.problem)
  }
  const takeIn = async (found: Restoring) => {
    await cards.attempt(() => takeInClient(found))
    setRestoring(null)
  }
  return (
    <section className="import-names">
      <OpenFileButton words={w.openFile} name={w.file} onOpen={(file) => void look(file)} />
      <div role="status">
        {restoring && (
          <>
            <p>{offline.backup.found(countsOf(restoring))}</p>
            <button type="button" className="button strong" onClick={() => void takeIn(restoring)}>
              {offline.backup.takeIn}
            </button>
          </>
        )}
      </div>
      {problem && <FileProblems problems={[problem]} />}
    </section>
  )
}
