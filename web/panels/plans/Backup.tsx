import { useEffect, useState } from "react"
import type { Problem } from "../../core/fields/problem"
import { type LookedThrough, lastBackup, lookThrough, restore, saveBackup } from "../../session/backup/backup"
import { notKeptWords, useWords } from "../../session/words"
import { countsOf } from "../../storage/backup"
import { whyNotKept } from "../../storage/notKept"
import { FileProblems } from "../fields/FileProblems"
import { OpenFileButton } from "../fields/OpenFileButton"

/** What became of the last touch. */
type Outcome =
  | { is: "nothing" }
  | { is: "looked"; looked: LookedThrough }
  | { is: "restored" }
  | { is: "unreadable"; problem: Problem }
  | { is: "failed"; why: string }

/** All that this browser keeps in one file, how old the last one is, and the way back from one. */
export function Backup({ onRestored }: { onRestored: () => void }) {
  const w = useWords().offline.backup
  const [madeAt, setMadeAt] = useState<string | null>(null)
  const [outcome, setOutcome] = useState<Outcome>({ is: "nothing" })
  useEffect(() => void lastBackup().then(setMadeAt, () => {}), [])

  const attempt = (work: Promise<Outcome>) =>
    work.catch((error) => ({ is: "failed" as const, why: notKeptWords(whyNotKept(error)) })).then(setOutcome)
  const save = async (): Promise<Outcome> => {
    const saved = await saveBackup()
    if (saved) setMadeAt(saved)
    return { is: "nothing" }
  }
  const look = async (file: File): Promise<Outcome> => {
    const looked = await lookThrough(file)
    return looked.ok ? { is: "looked", looked } : { is: "unreadable", problem: looked.problem }
  }
  const takeIn = async (looked: LookedThrough): Promise<Outcome> => {
    await restore(looked)
    onRestored()
    return { is: "restored" }
  }
  return (
    <section aria-labelledby="backup">
      <h3 id="backup">{w.title}</h3>
      <p>{madeAt ? ageWords(madeAt, w) : w.none}</p>
      <div className="actions">
        <button type="button" className="button" onClick={() => void attempt(save())}>
          {w.save}
        </button>
        <OpenFileButton words={w.open} name={w.file} onOpen={(file) => void attempt(look(file))} />
      </div>
      <p className="aside">{w.holds}</p>
      <div role="status">
        {outcome.is === "restored" && <p>{w.restored}</p>}
        {outcome.is === "looked" && (
          <>
            <p>{w.found(countsOf(outcome.looked.restoring))}</p>
            <button type="button" className="button" onClick={() => void attempt(takeIn(outcome.looked))}>
              {w.takeIn}
            </button>
          </>
        )}
      </div>
      {outcome.is === "unreadable" && <FileProblems problems={[outcome.problem]} />}
      {outcome.is === "failed" && (
        <p className="fault" role="alert">
          {outcome.why}
        </p>
      )}
    </section>
  )
}

type BackupWords = ReturnType<typeof useWords>["offline"]["backup"]

function ageWords(madeAt: string, w: BackupWords) {
  const days = Math.floor((Date.now() - Date.parse(madeAt)) / 86_400_000)
  return days < 1 ? w.today : w.days({ days })
}
