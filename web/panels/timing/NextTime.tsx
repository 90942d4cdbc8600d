import "./nextTime.css"
import { useId } from "react"
import { letters } from "../../core/document/limits"
import type { Plan } from "../../core/document/schema"
import { setPlanDetails } from "../../core/edits/plan/setPlanDetails"
import { commit } from "../../session/commit"
import { useTyped } from "../fields/useTyped"

/** What to do again and what to do otherwise: kept with the plan, printed on its record card. */
export function NextTime({ plan: { note } }: { plan: Plan }) {
  const id = useId()
  const [text, setText] = useTyped(note)
  const keep = () => {
    if (text !== note) commit("Write a note for next time", setPlanDetails({ note: text }))
  }
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>Next time</h2>
      <div className="field next-time">
        <textarea
          aria-labelledby={id}
          rows={3}
          maxLength={letters.note}
          value={text}
          onChange={(event) => setText(event.target.value)}
          onBlur={keep}
        />
      </div>
      <p className="aside">Printed on the record card, never on the map.</p>
    </section>
  )
}
