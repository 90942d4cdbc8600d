import type { ConflictRule } from "./conflicts"
import { findConflicts } from "./conflicts"
import { type Before, isCured, type Remedy, remedies } from "./remedies"
import type { Service } from "./scheduleInput"
import { planService } from "./timing"

/** A change of the service that removes a conflict, as planned again, and brings no other. Plain data. */
export type Cure = {
  kind: CureKind
  label: string
  /** What it costs, counted in minutes of the chair: for ranking. */
  costMin: number
  /** The service as the cure leaves it. */
  after: Service
  /** Foils that this leaves for another day, or out. */
  left: readonly string[]
}
export type CureKind =
  | "each-off"
  | "reorder"
  | "weaker-early"
  | "order-and-strength"
  | "fresh-bowl"
  | "second-hands"
  | "fewer-foils"
  | "another-day"

/** How far a search has come; with the last remedy tried for a conflict come its cures. */
export type CureStep = { done: number; of: number; found: { rule: ConflictRule; cures: Cure[] } | null }

/** The cures that work for one conflict of a service, cheapest first. */
export function findCures(service: Service, rule: ConflictRule): Cure[] {
  return [...searchCures(service, [rule])].flatMap(({ found }) => found?.cures ?? [])
}

/** Tries remedy after remedy for each conflict; whoever asks may stop asking. */
export function* searchCures(service: Service, rules: readonly ConflictRule[]): Generator<CureStep> {
  const before = beforeOf(service)
  const of = rules.length * remedies.length
  let done = 0
  for (const rule of rules) {
    const cures: Cure[] = []
    for (const remedyFor of remedies) {
      const remedy = remedyFor(before, rule)
      if (remedy && isCured(before, remedy.after, rule)) cures.push(priced(remedy, before))
      done += 1
      if (remedyFor !== remedies.at(-1)) yield { done, of, found: null }
    }
    yield { done, of, found: { rule, cures: ranked(cures) } }
  }
}

function beforeOf(service: Service): Before {
  const schedule = planService(service)
  const rules = new Set(findConflicts(service, schedule).map(({ rule }) => rule))
  return { service, schedule, rules, solved: new Map() }
}

function priced({ priceMin, ...cure }: Remedy, { schedule }: Before): Cure {
  const chairMinMore = Math.max(0, planService(cure.after).chairMin.mid - schedule.chairMin.mid)
  return { ...cure, costMin: priceMin + chairMinMore }
}

/** Cheapest first. Both at once is only for where neither the order nor the strength by itself is enough. */
function ranked(cures: readonly Cure[]): Cure[] {
  const isEnough = cures.some(({ kind }) => kind === "reorder" || kind === "weaker-early")
  return cures
    .filter(({ kind }) => kind !== "order-and-strength" || !isEnough)
    .sort((a, b) => a.costMin - b.costMin)
}
