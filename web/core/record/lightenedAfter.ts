import { foilRecords, levelLastSeen } from "../chair/chairRecord"
import { chairOfRecord, planAsDone } from "../chair/liveService"
import type { Lightened, Plan } from "../document/schema"
import { counts } from "../fields/limits"
import { dayIn } from "../text/zonedTime"
import { foilsDone } from "./doneToday"

/** What was lightened up to and with the last service of a plan, on the days that the clock of `zone` showed. */
export function lightenedAfter(plan: Plan, zone: string): readonly Lightened[] {
  const { service, lightened = [] } = plan
  if (!service) return lightened
  const records = foilRecords(chairOfRecord(service))
  const on = dayIn(zone, Date.parse(service.startedAt))
  const now = foilsDone(planAsDone(plan) ?? plan).map((section): Lightened => {
    return { on, level: levelLastSeen(records.get(section.id)), section }
  })
  return [...lightened, ...now].slice(-counts.lightened.high)
}
