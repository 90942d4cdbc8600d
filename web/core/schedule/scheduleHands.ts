import type { Person } from "./scheduleInput"

/** A piece of work given to one pair of hands. */
export type Turn = { person: number; fromMin: number; toMin: number }
export type Work = {
  minutes: number
  notBeforeMin: number
  atOwnPace?: boolean
  /** Minutes of other work that no break may part from this. */
  thenMin?: number
}

/** Pairs of hands and when each is free next. Work is never cut by a break. */
export type Crew = { people: readonly Person[]; freeAtMin: readonly number[] }

export const crewFrom = (people: readonly Person[], nowMin: number): Crew => ({
  people,
  freeAtMin: people.map(() => nowMin),
})

/**
 * Who would do the work and when: the hands that can begin first; of those, the ones free last, which wait least.
 * For foils placed in their order this is also the soonest finish that any sharing out reaches.
 */
export function nextTurn(crew: Crew, work: Work): Turn {
  let best = turnOf(crew, work, 0)
  for (let person = 1; person < crew.people.length; person++) {
    const turn = turnOf(crew, work, person)
    if (beats(turn, best, crew)) best = turn
  }
  return best
}

function turnOf({ people, freeAtMin }: Crew, work: Work, person: number): Turn {
  const { paceShare, breaks } = people[person]
  const minutes = work.minutes * (work.atOwnPace ? paceShare : 1)
  const unbroken = minutes + (work.thenMin ?? 0)
  const fromMin = afterBreaks(breaks, Math.max(freeAtMin[person], work.notBeforeMin), unbroken)
  return { person, fromMin, toMin: fromMin + minutes }
}

const beats = (turn: Turn, best: Turn, { freeAtMin }: Crew) =>
  turn.fromMin < best.fromMin ||
  (turn.fromMin === best.fromMin && freeAtMin[turn.person] > freeAtMin[best.person])

export const afterTurn = ({ people, freeAtMin }: Crew, { person, toMin }: Turn): Crew => ({
  people,
  freeAtMin: freeAtMin.map((free, at) => (at === person ? toMin : free)),
})

function afterBreaks(breaks: Person["breaks"], fromMin: number, minutes: number): number {
  if (breaks.length === 0) return fromMin
  let start = fromMin
  for (const rest of [...breaks].sort((a, b) => a.fromMin - b.fromMin))
    if (start < rest.toMin && start + minutes > rest.fromMin) start = rest.toMin
  return start
}
