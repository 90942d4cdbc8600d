import type { ConflictRule } from "../schedule/conflicts"
import { findConflicts } from "../schedule/conflicts"
import type { Service } from "../schedule/scheduleInput"
import { planService } from "../schedule/timing"
import type { Fix } from "./fix"
import { type Before, isFixed, type Remedy, remedies } from "./remedies"

/** How far a search has come; with the last remedy tried for a conflict come its cures. */
export type FixStep = { done: number; of: number; found: { rule: ConflictRule; cures: Fix[] } | null }

/** The cures that work for one conflict of a service, cheapest first. */
export function findFixes(service: Service, rule: ConflictRule): Fix[] {
  return [...searchFixes(service, [rule])].flatMap(({ found }) => found?.cures ?? [])
}

/** Tries remedy after remedy for each conflict; whoever asks may stop asking. */
export function* searchFixes(service: Service, rules: readonly ConflictRule[]): Generator<FixStep> {
  const before = beforeOf(service)
  const of = rules.length * remedies.length
  let done = 0
  for (const rule of rules) {
    const cures: Fix[] = []
    for (const remedyFor of remedies) {
      const remedy = remedyFor(before, rule)
      if (remedy && isFixed(before, remedy.after, rule)) cures.push(priced(remedy, before))
      done += 1
      if (remedyFor !== remedies.at(-1)) yield { done, of, found: null }
    }
    yield { done, of, found: { rule, cures: ranked(cures) } }
  }
}

function beforeOf(service: Service): Before {
  const schedule = planService(service)
  const rules = new Set(findConflicts(service, schedule).map(({ code }) => code))
  return { service, schedule, rules, solved: new Map() }
}

function priced({ priceMin, ...cure }: Remedy, { schedule }: Before): Fix {
  const chairMinMore = Math.max(0, planService(cure.after).chairMin.mid - schedule.chairMin.mid)
  return { ...cure, costMin: priceMin + chairMinMore }
}

/** Cheapest first. Both at once is only for where neither the order nor the strength by itself is enough. */
function ranked(cures: readonly Fix[]): Fix[] {
  const isEnough = cures.some(({ code }) => code === "reorder" || code === "weaker-early")
  return cures
    .filter(({ code }) => code !== "order-and-strength" || !isEnough)
    .sort((a, b) => a.costMin - b.costMin)
}
