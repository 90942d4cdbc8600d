import "./nextTime.css"
import { useId } from "react"
import type { Plan } from "../../core/document/schema"
import { setPlanDetails } from "../../core/edits/plan/setPlanDetails"
import { letters } from "../../core/fields/limits"
import { commit } from "../../session/commit"
import { useWords } from "../../session/words"
import { useTyped } from "../fields/useTyped"

/** What to do again and what to do otherwise: kept with the plan, printed on its record card. */
export function NextTime({ plan: { note } }: { plan: Plan }) {
  const id = useId()
  const w = useWords().timing.nextTime
  const [text, setText] = useTyped(note)
  const keep = () => {
    if (text !== note) commit({ chapter: "timing", code: "next-time" }, setPlanDetails({ note: text }))
  }
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{w.title}</h2>
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
      <p className="aside">{w.where}</p>
    </section>
  )
}
