import { useState } from "react"
import { newId } from "../../core/document/newId"
import type { KeptWeighing } from "../../core/weighing/salonRecord"
import { readWeighings } from "../../core/weighing/weighingCsv"
import { weighingsFile } from "../../core/weighing/weighingsFile"
import { nowHere } from "../../session/nowHere"
import { saveFile } from "../../session/saveFile"
import { usePlan } from "../../session/usePlan"
import { changeSalonHere } from "../../session/useSalon"

/** A list of weighings in and out, and the way back to the starting figures. */
export function WeighingFiles({ weighings }: { weighings: readonly KeptWeighing[] }) {
  const product = usePlan((plan) => plan.mixes[0].product)
  const [problems, setProblems] = useState<readonly string[]>([])
  const open = async (file: File) => {
    const read = readWeighings(await file.text())
    setProblems(read.ok ? [] : read.problems)
    if (!read.ok) return
    const added = read.rows.map(({ line, ...row }) => ({
      ...row,
      ...fromFile(`${file.name.slice(0, 60)}, line ${line}`, product),
    }))
    await changeSalonHere("Add weighings from a list", (salon) => ({
      ...salon,
      weighings: [...salon.weighings, ...added].slice(-5000),
    }))
  }
  const isReset = weighings.every(({ leftOut }) => leftOut)
  const countAll = (isCounted: boolean) =>
    void changeSalonHere(
      isCounted ? "Count all weighings again" : "Go back to the starting figures",
      (salon) => ({
        ...salon,
        weighings: salon.weighings.map((row) => ({ ...row, leftOut: !isCounted })),
      }),
    )
  return (
    <>
      <div className="actions">
        <label className="button">
          Add a list, CSV
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
              onClick={() => saveFile(weighingsFile(weighings), "weighings.csv", "text/csv")}
            >
              Save the list, CSV
            </button>
            <button type="button" className="button quiet" onClick={() => countAll(isReset)}>
              {isReset ? "Count all weighings again" : "Back to the starting figures"}
            </button>
          </>
        )}
      </div>
      {problems.length > 0 && (
        <ul className="cautions" role="alert">
          {problems.map((problem) => (
            <li key={problem}>{problem}</li>
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
