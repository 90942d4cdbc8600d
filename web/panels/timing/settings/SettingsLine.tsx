import { useState } from "react"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { usualTiming } from "../../../core/document/usualTiming"
import { pieceOf } from "../../../core/kinds/kindRecords"
import { useWords } from "../../../session/words"
import { TimingFields } from "./TimingFields"

/** The settings of the clock in one line, and the fields behind *Change*. */
export function SettingsLine({ plan }: { plan: Plan }) {
  const [isOpen, open] = useState(false)
  const w = useWords().timing.settings
  const {
    skill,
    pace,
    hands,
    rinse,
    bookingMin,
    heatMin,
    isDried = true,
    breaks,
  } = plan.timing ?? usualTiming
  const line = w.line({
    pace: pace ? "learnt" : skill,
    people: hands,
    rinse,
    bookingMin,
    heatMin,
    isDried,
    breaks: breaks.length,
    piece: pieceOf(plan.sections.filter(isFoil)),
  })
  return (
    <section className="settings-line" aria-label={w.title}>
      <p>
        {line}{" "}
        <button type="button" className="button quiet" aria-expanded={isOpen} onClick={() => open(!isOpen)}>
          {isOpen ? w.close : w.change}
        </button>
      </p>
      {isOpen && <TimingFields plan={plan} />}
    </section>
  )
}
