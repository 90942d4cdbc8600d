import type { Range } from "../../../geometry/hair/tradeFigures"
import { type FoilKind, isFoil } from "../../../geometry/section/section"
import { type Skill, timedFoilMin } from "../../../presets/timing/pace"
import type { StartFigures } from "../document/salon"
import type { Plan } from "../document/schema"
import type { ServiceRecord } from "../document/serviceRecord"
import { byFoilKind, foilKinds } from "../kinds/kindRecords"
import { chairOfRecord } from "./liveService"
import { learnPace, timedFoils, usualPace } from "./schedulePace"

/** What the chair has taught of one person: minutes of every foil that was timed, by its kind. */
export type Lesson = {
  /** As written beside the pair of hands; "" where no name was given. */
  person: string
  services: number
  minutes: Readonly<Record<FoilKind, readonly number[]>>
}

/** Lessons from every service recorded with some plans, by person; a copy of a plan does not teach twice. */
export function lessonsOf(plans: readonly Plan[]): Lesson[] {
  const lessons = new Map<string, { services: Set<string>; minutes: Record<FoilKind, number[]> }>()
  for (const { record, kindOf } of servicesOf(plans))
    for (const { foil, minutes, by } of timedFoils(chairOfRecord(record))) {
      const kind = kindOf.get(foil)
      if (!kind || !isPlausible(minutes)) continue
      const person = record.people?.[by - 1]?.trim() ?? ""
      const lesson = lessons.get(person) ?? {
        services: new Set(),
        minutes: byFoilKind((): number[] => []),
      }
      lesson.services.add(record.startedAt)
      lesson.minutes[kind].push(minutes)
      lessons.set(person, lesson)
    }
  return [...lessons]
    .map(([person, { services, minutes }]) => ({ person, services: services.size, minutes }))
    .sort((a, b) => a.person.localeCompare(b.person))
}

/** The pace of a person: what is usual for the skill, moved by every foil that was timed. */
export function paceOf({ minutes }: Lesson, skill: Skill, start?: StartFigures): Record<FoilKind, Range> {
  const learn = (kind: FoilKind): Range => learnPace(usualPace(skill, kind, start), minutes[kind])
  return byFoilKind(learn)
}

export const foilsTimed = ({ minutes }: Lesson) =>
  foilKinds.reduce((count, kind) => count + minutes[kind].length, 0)

function servicesOf(plans: readonly Plan[]) {
  const services = new Map<string, { record: ServiceRecord; kindOf: ReadonlyMap<string, FoilKind> }>()
  for (const plan of plans)
    for (const record of [...(plan.earlier ?? []), ...(plan.service ? [plan.service] : [])])
      services.set(record.startedAt, { record, kindOf: kindsOf(plan, record) })
  return services.values()
}

/** What was timed of which kind; a foil on which two mixes went tells how long that takes, and nothing of its kind. */
const kindsOf = ({ sections, later = [] }: Plan, { foils }: ServiceRecord) => {
  const twoMixes = new Set(foils.flatMap(({ id, roots }) => (roots ? [id] : [])))
  return new Map(
    [
      ...[...sections, ...later].filter(isFoil).map(({ id, kind }) => [id, kind] as const),
      ...foils.flatMap(({ id, kind }) => (kind ? [[id, kind] as const] : [])),
    ].filter(([id]) => !twoMixes.has(id)),
  )
}

const isPlausible = (minutes: number) => minutes >= timedFoilMin.low && minutes <= timedFoilMin.high
