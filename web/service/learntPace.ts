import { type FoilKind, isFoil } from "../../geometry/section/section"
import type { Range } from "../../geometry/tradeFigures"
import type { Plan } from "../plan/schema"
import type { TimingChoices } from "../plan/timingChoices"
import { usualTiming } from "../plan/usualTiming"
import { chairOfRecord } from "./liveService"
import { learnPace, timedFoils, usualPace } from "./schedulePace"

/** Minutes a foil of each kind, learnt from the last service on top of what was planned with; null where none was timed. */
export function learntPace(plan: Plan): TimingChoices["pace"] {
  if (!plan.service) return null
  const { skill, pace } = plan.timing ?? usualTiming
  const kindOf = new Map(plan.sections.filter(isFoil).map(({ id, kind }) => [id, kind]))
  const timed = timedFoils(chairOfRecord(plan.service))
  if (timed.length === 0) return null
  const learn = (kind: FoilKind): Range =>
    learnPace(
      pace?.[kind] ?? usualPace(skill, kind),
      timed.filter(({ foil }) => kindOf.get(foil) === kind).map(({ minutes }) => minutes),
    )
  return { slice: learn("slice"), weave: learn("weave"), backcomb: learn("backcomb") }
}
