import { useState } from "react"
import { daysOf } from "../../core/cautions/asking/questions"
import type { RuleName } from "../../core/cautions/cautions"
import { newConsultation } from "../../core/document/consultation"
import { letters as lettersMost } from "../../core/fields/limits"
import { nowHere } from "../../session/nowHere"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { DateField } from "../fields/DateField"
import { TextField } from "../fields/TextField"
import type { Settle } from "./settle"

/** A doctor's letter with its date answers what the doctor decides, for this visit. */
export function LetterForm({ rule, settle }: { rule: RuleName; settle: Settle }) {
  const { panel } = useWords().cautions
  const date = usePlan((plan) => plan.date)
  const { letters } = usePlan((plan) => plan.consultation) ?? newConsultation()
  const [from, setFrom] = useState("")
  const [dated, setDated] = useState("")
  const [isWanting, setWanting] = useState(false)
  const { today, visit } = daysOf({ date }, nowHere())
  const isWritten = from.trim() !== "" && dated !== "" && dated <= today
  const save = () => {
    if (!isWritten) return setWanting(true)
    const others = letters.filter((letter) => letter.rule !== rule)
    settle("add-letter", { letters: [...others, { rule, from: from.trim(), dated, visit }] })
  }
  return (
    <details>
      <summary>{panel.letter}</summary>
      <div className="pairs">
        <TextField name={panel.letterFrom} value={from} most={lettersMost.name} onCommit={setFrom} />
        <DateField name={panel.letterDated} value={dated} onCommit={setDated} />
      </div>
      <button type="button" className="button" onClick={save}>
        {panel.saveLetter}
      </button>
      {isWanting && !isWritten && (
        <p className="fault" role="alert">
          {panel.letterWanting}
        </p>
      )}
    </details>
  )
}
