import { useState } from "react"
import { letters } from "../../core/fields/limits"
import { useWords } from "../../session/words"
import type { LessonWords } from "../../words/every/lessonWords"

type Fault = LessonWords["faults"][number]

const parts = ["fault", "cause", "cure"] as const
const empty: Fault = { fault: "", cause: "", cure: "" }

/** Faults with their causes and cures, a row each; a row that holds nothing is none. */
export function FaultRows({ faults }: { faults: readonly Fault[] }) {
  const { sheets } = useWords()
  const w = sheets.lesson
  const [rows, setRows] = useState(() => faults.map((fault, key) => ({ key, fault })))
  const add = () => setRows([...rows, { key: (rows.at(-1)?.key ?? 0) + 1, fault: empty }])
  return (
    <fieldset className="fault-rows">
      <legend>{w.faults}</legend>
      <ol>
        {rows.map(({ key, fault }, i) => (
          <li key={key}>
            {parts.map((part) => (
              <label className="field" key={part}>
                <span className="name">{sheets.handout[part]}</span>
                <textarea name={part} rows={2} defaultValue={fault[part]} maxLength={letters.step} />
              </label>
            ))}
            <button
              type="button"
              className="button quiet"
              aria-label={w.removeFault(i + 1)}
              onClick={() => setRows(rows.filter((row) => row.key !== key))}
            >
              {w.remove}
            </button>
          </li>
        ))}
      </ol>
      <button type="button" className="button" onClick={add}>
        {w.addFault}
      </button>
    </fieldset>
  )
}
