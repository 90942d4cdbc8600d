import { fileStem } from "../../core/file/fileName"
import { useWords } from "../../session/words"
import type { PlanRecord } from "../../storage/records"
import { saveText } from "./savePlanToFile"
import { planTitle } from "./shelfActions"

/** The plans of a shelf that this Partline cannot write in: each can be taken out as a file. */
export function ReadOnlyList({ records }: { records: readonly PlanRecord[] }) {
  const w = useWords().plans.readOnly
  return (
    <section aria-labelledby="read-only-title">
      <h3 id="read-only-title">{w.title}</h3>
      <ul className="shelf">
        {records.map((record) => (
          <li key={record.id}>
            <b>{planTitle(record)}</b>
            <button
              type="button"
              className="button quiet"
              aria-label={w.saveNamed(planTitle(record))}
              onClick={() => saveText(record.text, `${fileStem(record.name, "plan")}.partline.json`)}
            >
              {w.save}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
