import { useState } from "react"
import { type Clearance, openTogether } from "../../core/cautions/clearance"
import { newConsultation } from "../../core/document/consultation"
import { answerAloud } from "../../core/edits/plan/answerQuestions"
import { letters } from "../../core/fields/limits"
import { commit } from "../../session/commit"
import { nowHere } from "../../session/nowHere"
import { usePlan } from "../../session/usePlan"
import { useWords } from "../../session/words"
import { TextField } from "../fields/TextField"

/** Signs that the questions still open were asked aloud and answered with no: all but those asked one by one. */
export function AskedAloud({ told }: { told: Clearance }) {
  const { askedBy } = usePlan((plan) => plan.consultation) ?? newConsultation()
  const { clearance, notAsked } = useWords().cautions
  const { aloud: said } = clearance
  const [by, setBy] = useState(askedBy)
  const [isWanting, setWanting] = useState(false)
  const open = openTogether(told.notAsked)
  if (open.length === 0) return null
  const sign = () => {
    if (by.trim() === "") return setWanting(true)
    commit({ chapter: "cautions", code: "ask-aloud" }, answerAloud(open, by.trim(), nowHere()))
  }
  return (
    <section className="asked-aloud" aria-label={said.title}>
      <p className="aside">{said.aside(open.length)}</p>
      <ul>
        {open.map((question) => (
          <li key={question}>
            {notAsked.question({ code: "question", question, before: null, isOld: false })}
          </li>
        ))}
      </ul>
      <div className="with-fields">
        <TextField name={said.by} value={by} most={letters.name} onCommit={setBy} />
        <button type="button" className="button" onClick={sign}>
          {said.sign}
        </button>
      </div>
      {isWanting && by.trim() === "" && (
        <p className="fault" role="alert">
          {said.wanting}
        </p>
      )}
    </section>
  )
}
