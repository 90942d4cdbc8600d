import { alarmsOfPlan } from "../../core/chair/alarmsOfPlan"
import type { Plan } from "../../core/document/schema"

/** What the red button was touched for, at the last service and outside of one, by the wall clock. */
export function AlarmLog({ plan }: { plan: Plan }) {
  const all = alarmsOfPlan(plan).sort((a, b) => a.wallAt.localeCompare(b.wallAt))
  if (all.length === 0) return null
  return (
    <section aria-labelledby="alarms-title">
      <h2 id="alarms-title">The red button</h2>
      <ol className="alarm-log">
        {all.map(({ wallAt, what }) => (
          <li key={`${wallAt} ${what}`}>
            {whenText(wallAt)}: {what}
          </li>
        ))}
      </ol>
    </section>
  )
}

const whenText = (wallAt: string) =>
  new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "medium" }).format(new Date(wallAt))
