import { foilNumbers, pieceOfAlarm } from "../../core/chair/alarmsOfPlan"
import type { Plan } from "../../core/document/schema"
import type { AlarmTap } from "../../core/document/serviceRecord"
import { useService } from "../../session/chair/useChair"
import { useWords } from "../../session/words"
import { alarmWords } from "../../words/en/chair/alarmWords"

/** When each was tapped: by the service's clock and the wall's while one goes on, by the wall's alone otherwise. */
export function AlarmTimes({ plan: { alarms = [] } }: { plan: Plan }) {
  const log = useService((chair) => chair.log) ?? []
  const foils = useService((chair) => chair.foils) ?? []
  const { emergencies: w, bar } = useWords().chair
  const sentence = (alarm: Omit<AlarmTap, "kind">) =>
    alarmWords(alarm, foilNumbers(alarm, foils), w, pieceOfAlarm(alarm, foils))
  const lines = log.flatMap(({ tap, atMs, wallMs }) =>
    tap.kind === "alarm"
      ? [w.logLine({ time: w.time(wallMs), clock: bar.clock(atMs), what: sentence(tap) })]
      : [],
  )
  const outside = alarms.map(({ wallAt, ...alarm }) => {
    const wallMs = Date.parse(wallAt)
    return w.logDay({ day: w.day(wallMs), time: w.time(wallMs), what: sentence(alarm) })
  })
  const all = [...outside, ...lines]
  if (all.length === 0) return null
  return (
    <section aria-label={w.log}>
      <h2>{w.log}</h2>
      <ol className="time-log">
        {all.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
    </section>
  )
}
