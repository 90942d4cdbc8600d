import { checkPlan } from "../../core/cautions/visitOfPlan"
import type { Plan } from "../../core/document/schema"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { deviceLacks, thisDevice } from "../../session/chair/deviceLacks"
import { useChair } from "../../session/chair/useChair"
import { nowHere } from "../../session/nowHere"
import { spanText } from "../timing/minutes"
import { startService } from "./chairActions"

/** Before minute 0: what is to come, and what holds it. */
export function ChairStart({ plan, timed }: { plan: Plan; timed: TimedPlan }) {
  const hold = useChair((state) => state.hold)
  if (!timed.ok)
    return (
      <section className="chair-page">
        {timed.problems.map((problem) => (
          <p className="large" key={problem}>
            {problem}
          </p>
        ))}
      </section>
    )
  const { stops } = checkPlan(plan, nowHere())
  const { foils, bowls } = timed.schedule
  return (
    <section className="chair-page">
      <p className="large">
        {foils.length === 1 ? "1 foil" : `${foils.length} foils`},{" "}
        {bowls.length === 1 ? "1 bowl" : `${bowls.length} bowls`}, {spanText(timed.schedule.chairMin)} in the
        chair.
      </p>
      {stops.map(({ why }) => (
        <p className="said refused" key={why}>
          {why}
        </p>
      ))}
      {stops.length > 0 && <p className="large">A stop holds the mix. Settle it under Mixture first.</p>}
      <button
        type="button"
        className="touch giant"
        disabled={stops.length > 0 || hold !== "held"}
        onClick={() => startService(plan, timed)}
      >
        Start: first parting
      </button>
      <p>
        The clock runs from here. It goes on through reload and sleep. Tap each foil as the product first
        touches the hair.
      </p>
      {deviceLacks(thisDevice()).map((lack) => (
        <p key={lack}>{lack}</p>
      ))}
    </section>
  )
}
