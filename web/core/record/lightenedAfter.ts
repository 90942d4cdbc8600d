import { type Foil, rootsOf } from "../../../geometry/section/section"
import { type FoilRecord, foilRecords, levelLastSeen } from "../chair/chairRecord"
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
    const record = records.get(section.id)
    return { on, level: levelLastSeen(record), section: asCoated(section, record) }
  })
  return [...lightened, ...now].slice(-counts.lightened.high)
}

/** Roots that were to go on later and never did were not lightened: product began where they end. */
function asCoated(foil: Foil, record: FoilRecord | undefined): Foil {
  const roots = rootsOf(foil)
  if (!roots || record?.rootsLater?.onAtMs !== null) return foil
  return { ...foil, ...{ roots: undefined }, rootDistanceMm: Math.max(foil.rootDistanceMm, roots.toMm) }
}
