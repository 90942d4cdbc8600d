import { useEffect, useState } from "react"
import { isFoil } from "../../../../geometry/section/section"
import type { Plan } from "../../../core/document/schema"
import { pieceOf } from "../../../core/kinds/kindRecords"
import { timedPlan } from "../../../core/schedule/timedPlan"
import { draftStore } from "../../../session/draftStore"
import { sessionStore } from "../../../session/sessionStore"
import { useWords } from "../../../session/words"

/** A plan is timed when it has not changed for this long and no stroke is in hand, so that the clock never slows the hand. */
const restMs = 400

/** From the first foil to the last off, minutes, and the way to see the map in time; the last known until the plan has come to rest. */
export function FootMinutes({ plan }: { plan: Plan }) {
  const { common, placement } = useWords()
  const [minutes, setMinutes] = useState<{ lastOn: number; lastOff: number } | null>(null)
  useEffect(() => {
    let rested = setTimeout(time, restMs)
    function time() {
      if (draftStore.getState().draft) {
        rested = setTimeout(time, restMs)
        return
      }
      const timed = timedPlan(plan)
      if (!timed.ok) return setMinutes(null)
      const { lastOnMin, rinseMin } = timed.schedule
      setMinutes({ lastOn: Math.ceil(lastOnMin), lastOff: Math.round(rinseMin) })
    }
    return () => clearTimeout(rested)
  }, [plan])
  if (minutes === null) return null
  return (
    <>
      <span className="figure">
        <b>{common.figures.minutes(minutes.lastOff)}</b>{" "}
        {placement.foot.firstToLast(pieceOf(plan.sections.filter(isFoil)))}
      </span>
      <button
        type="button"
        className="button"
        onClick={() => sessionStore.setState({ mapMin: minutes.lastOn, selectedIds: [] })}
      >
        {placement.foot.minuteByMinute}
      </button>
    </>
  )
}
