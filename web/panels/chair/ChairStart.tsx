import type { NotKnown } from "../../core/cautions/notKnown"
import { checkPlan } from "../../core/cautions/visitOfPlan"
import type { Plan } from "../../core/document/schema"
import type { TimedPlan } from "../../core/schedule/timedPlan"
import { deviceLacks, thisDevice } from "../../session/chair/deviceLacks"
import { useChair } from "../../session/chair/useChair"
import { nowHere } from "../../session/nowHere"
import { useWords } from "../../session/words"
import { say } from "../../words/say"
import { AskAloud } from "./AskAloud"
import { startService } from "./chairActions"

/** Before minute 0: what is to come, and what holds it. */
export function ChairStart({ plan, timed }: { plan: Plan; timed: TimedPlan }) {
  const hold = useChair((state) => state.hold)
  const { chair: w, cautions, timing } = useWords()
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
  const { stops, notKnown } = checkPlan(plan, nowHere())
  const notAsked = notKnown.filter(isHealth)
  const { foils, bowls } = timed.schedule
  return (
    <section className="chair-page">
      <p className="large">
        {w.start.ahead({
          foils: foils.length,
          bowls: bowls.length,
          span: timing.figures.span(timed.schedule.chairMin),
        })}
      </p>
      {stops.map(({ rule, mixes, why }) => (
        <p className="said refused" key={`${rule}${mixes ?? ""}`}>
          {say(cautions.why, why)}
        </p>
      ))}
      {stops.length > 0 && <p className="large">{w.start.stopped}</p>}
      {notAsked.length > 0 && stops.length === 0 ? (
        <AskAloud
          things={notAsked.map((thing) => say(cautions.notKnown, thing))}
          isHeld={hold === "held"}
          onAsked={(by) => startService(plan, timed, by)}
        />
      ) : (
        <button
          type="button"
          className="touch giant"
          disabled={stops.length > 0 || hold !== "held"}
          onClick={() => startService(plan, timed)}
        >
          {w.start.begin}
        </button>
      )}
      <p>{w.start.clock}</p>
      <p>{w.start.reach}</p>
      {deviceLacks(thisDevice()).map((lack) => (
        <p key={lack}>{w.device[lack]}</p>
      ))}
    </section>
  )
}

/** What can hurt while nobody has asked it. */
const isHealth = ({ code }: NotKnown) => code === "age" || code === "scalp" || code === "question"
