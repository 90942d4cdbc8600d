import "./nextTime.css"
import { useId } from "react"
import { act } from "../../plan/act"
import { setPlanDetails } from "../../plan/edits/setPlanDetails"
import { letters } from "../../plan/limits"
import type { Plan } from "../../plan/schema"
import { useTyped } from "../useTyped"

/** What to do again and what to do otherwise: kept with the plan, printed on its record card. */
export function NextTime({ plan: { note } }: { plan: Plan }) {
  const id = useId()
  const [text, setText] = useTyped(note)
  const keep = () => {
    if (text !== note) act("Write a note for next time", setPlanDetails({ note: text }))
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
