import type { Plan } from "../document/schema"
import type { RecordedTap, ServiceRecord } from "../document/serviceRecord"
import { initialsOf } from "../text/initials"

/** Who worked at a service: 1 the colourist, 2 the assistant. A name that nobody gave is empty, as its initials are. */
export type RecordPerson = { who: 1 | 2; name: string; initials: string }

type Worked = Pick<ServiceRecord, "people" | "foils" | "log">

/** Everybody who worked where there were two, else the colourist, if named. */
export function peopleOf(service: Worked): RecordPerson[] {
  const isTwo = worksInTwo(service)
  const [first = "", second = ""] = (service.people ?? []).map((name) => name.trim())
  const people = isTwo ? [first, second] : [first]
  if (people.every((name) => name === "") && !isTwo) return []
  return people.map((name, at) => ({ who: at === 0 ? 1 : 2, name, initials: shortOf(name, people) }))
}

/** The person of a tap that says whose it was, where two worked. */
export function personOfTap(service: Worked): (by: 1 | 2 | undefined) => RecordPerson | null {
  if (!worksInTwo(service)) return () => null
  const people = peopleOf(service)
  return (by) => people.find(({ who }) => who === by) ?? null
}

/** Who placed each foil that a tap tells it of; of one pair of hands, whoever it was placed all that went on. */
export function placedBy({ service }: Pick<Plan, "service">): (foil: string) => RecordPerson | null {
  if (!service) return () => null
  const people = peopleOf(service)
  const personOf = (who: 1 | 2) => people.find((person) => person.who === who) ?? null
  if (!worksInTwo(service)) return () => personOf(1)
  const placed = new Map(service.log.flatMap(placing))
  return (foil) => {
    const who = placed.get(foil)
    return who === undefined ? null : personOf(who)
  }
}

const worksInTwo = ({ foils, log }: Worked) =>
  foils.some(({ lane }) => lane !== undefined) || log.flatMap(placing).some(([, who]) => who === 2)

const placing = ({ tap, undone }: RecordedTap): [string, 1 | 2][] =>
  !undone && (tap.kind === "on" || tap.kind === "missed-on") && tap.by !== undefined
    ? [[tap.foil, tap.by]]
    : []

/** Initials; two who would share theirs keep their names whole, as does a name that has none. */
function shortOf(name: string, all: readonly string[]): string {
  const short = all.map((each) => initialsOf(each))
  return new Set(short).size === short.length ? initialsOf(name) || name : name
}
