import { useState } from "react"
import type { StartFigures } from "../../core/document/salon"
import type { Problem } from "../../core/fields/problem"
import { openStart } from "../../core/joining/startFile"
import { changeSalonHere } from "../../session/salon/useSalon"
import { useWords } from "../../session/words"

/** What other salons learnt, joined, for this one to start from. */
export function StartFile({ start }: { start: StartFigures | undefined }) {
  const { weighing, problems: said } = useWords()
  const w = weighing.start
  const [problems, setProblems] = useState<readonly Problem[]>([])
  const open = async (file: File) => {
    const opened = openStart(await file.text())
    setProblems(opened.ok ? [] : opened.problems)
    if (opened.ok) await startFrom("take-start", opened.start)
  }
  return (
    <>
      {start && <p className="aside">{w.from(start)}</p>}
      <div className="actions">
        <label className="button">
          {w.take}
          <input
            className="unseen"
            type="file"
            accept=".json,application/json"
            onChange={({ target }) => {
              const [file] = target.files ?? []
              if (file) void open(file)
              target.value = ""
            }}
          />
        </label>
        {start && (
          <button
            type="button"
            className="button quiet"
            onClick={() => void startFrom("leave-start", undefined)}
          >
            {w.leave}
          </button>
        )}
      </div>
      {problems.length > 0 && (
        <ul className="cautions" role="alert">
          {problems.map((problem) => (
            <li key={JSON.stringify(problem)}>{said.sentence(problem)}</li>
          ))}
        </ul>
      )}
    </>
  )
}

const startFrom = (code: "take-start" | "leave-start", start: StartFigures | undefined) =>
  changeSalonHere({ chapter: "weighing", code }, (salon) => ({ ...salon, start }))
