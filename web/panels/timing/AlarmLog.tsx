import { alarmsOfPlan, foilNumbers, pieceOfAlarm } from "../../core/chair/alarmsOfPlan"
import type { Plan } from "../../core/document/schema"
import { useWords } from "../../session/words"
import { alarmWords } from "../../words/en/chair/alarmWords"

/** What the red button was touched for, at the last service and outside of one, by the wall clock. */
export function AlarmLog({ plan }: { plan: Plan }) {
  const { chair, timing } = useWords()
  const all = alarmsOfPlan(plan).sort((a, b) => a.wallAt.localeCompare(b.wallAt))
  if (all.length === 0) return null
  const foils = plan.service?.foils ?? []
  const lines = all.map((alarm) => {
    const what = alarmWords(alarm, foilNumbers(alarm, foils), chair.emergencies, pieceOfAlarm(alarm, foils))
    return timing.alarms.line({ wallMs: Date.parse(alarm.wallAt), what })
  })
  return (
    <section aria-labelledby="alarms-title">
      <h2 id="alarms-title">{timing.alarms.title}</h2>
      <ol className="alarm-log">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
    </section>
  )
}
