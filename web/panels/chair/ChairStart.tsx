import { isFoil } from "../../../geometry/section/section"
import type { Plan } from "../../core/document/schema"
import { foilCount } from "../../core/figures/foilCount"
import { pieceOf } from "../../core/kinds/kindRecords"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { deviceLacks, thisDevice } from "../../session/chair/deviceLacks"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import { BeginService } from "./BeginService"

/** Before minute 0: what is to come, and what holds it. */
export function ChairStart({ plan, timed }: { plan: Plan; timed: TimedPlan }) {
  const { chair: w, timing } = useWords()
  if (!timed.ok)
    return (
      <section className="chair-page">
        {timed.problems.map((problem) => (
          <p className="large" key={problem.code}>
            {say(timing.problems, problem)}
          </p>
        ))}
      </section>
    )
  const { bowls } = timed.schedule
  const foils = plan.sections.filter(isFoil)
  return (
    <section className="chair-page">
      <p className="large">
        {w.start.ahead({
          foils: foilCount(foils, plan),
          piece: pieceOf(foils),
          bowls: bowls.length,
          span: timing.figures.span(timed.schedule.chairMin),
        })}
      </p>
      <BeginService plan={plan} timed={timed} words={w.start.begin} className="touch giant" />
      <p>{w.start.clock(pieceOf(foils))}</p>
      <p>{w.start.reach}</p>
      {deviceLacks(thisDevice()).map((lack) => (
        <p key={lack}>{w.device[lack]}</p>
      ))}
    </section>
  )
}
