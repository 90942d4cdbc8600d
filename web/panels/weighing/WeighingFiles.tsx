import { useState } from "react"
import { newId } from "../../core/document/newId"
import type { KeptWeighing } from "../../core/weighing/salonRecord"
import { type ListProblem, mostListMb, readWeighings, tooLargeList } from "../../core/weighing/weighingCsv"
import { weighingsFile } from "../../core/weighing/weighingsFile"
import { nowHere } from "../../session/nowHere"
import { changeSalonHere } from "../../session/salon/useSalon"
import { saveFile } from "../../session/saveFile"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { say } from "../../words/say"

/** A list of weighings in and out, and the way back to the starting figures. */
export function WeighingFiles({ weighings }: { weighings: readonly KeptWeighing[] }) {
  const w = useWords().weighing.list
  const product = usePlan((plan) => plan.mixes[0].product)
  const [problems, setProblems] = useState<readonly ListProblem[]>([])
  const open = async (file: File) => {
    const read = file.size > mostListMb * 1024 * 1024 ? tooLargeList() : readWeighings(await file.text())
    setProblems(read.ok ? [] : read.problems)
    if (!read.ok) return
    const added = read.rows.map(({ line, ...row }) => ({
      ...row,
      ...fromFile(w.line({ file: [...file.name].slice(0, 40).join(""), line }), product),
    }))
    await changeSalonHere({ chapter: "weighing", code: "add-list" }, (salon) => ({
      ...salon,
      weighings: [...salon.weighings, ...added].slice(-5000),
    }))
  }
  const isReset = weighings.every(({ leftOut }) => leftOut)
  const countAll = (isCounted: boolean) =>
    void changeSalonHere(
      { chapter: "weighing", code: isCounted ? "count-all" : "back-to-start" },
      (salon) => ({
        ...salon,
        weighings: salon.weighings.map((row) => ({ ...row, leftOut: !isCounted })),
      }),
    )
  return (
    <>
      <div className="actions">
        <label className="button">
          {w.add}
          <input
            className="unseen"
            type="file"
            accept=".csv,text/csv"
            onChange={({ target }) => {
              const [file] = target.files ?? []
              if (file) void open(file)
              target.value = ""
            }}
          />
        </label>
        {weighings.length > 0 && (
          <>
            <button
              type="button"
              className="button"
              onClick={() => void saveFile(weighingsFile(weighings), "weighings.csv", "text/csv")}
            >
              {w.save}
            </button>
            <button type="button" className="button quiet" onClick={() => countAll(isReset)}>
              {isReset ? w.countAll : w.backToStart}
            </button>
          </>
        )}
      </div>
      {problems.length > 0 && (
        <ul className="cautions" role="alert">
          {problems.map((problem) => (
            <li key={JSON.stringify(problem)}>{say(w.problem, problem)}</li>
          ))}
        </ul>
      )}
    </>
  )
}

const fromFile = (name: string, product: string) => ({
  id: newId(),
  weighedAt: nowHere().moment,
  name,
  product,
  kind: null,
  leftOut: false,
})
