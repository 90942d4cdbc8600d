import { fixCosts } from "../../../presets/timing/pace"
import type { ConflictRule } from "../schedule/conflicts"
import { findConflicts } from "../schedule/conflicts"
import type { Service } from "../schedule/scheduleInput"
import { type Freedom, solveOrder } from "../schedule/solveOrder"
import type { Schedule } from "../schedule/timing"
import { planService } from "../schedule/timing"
import type { Fix, FixKind } from "./fix"
import { bowlsAfresh } from "./freshBowls"

/** A change that may cure, and what it costs beside the minutes of the chair. */
export type Remedy = Omit<Fix, "costMin"> & { priceMin: number }
/** A service with its conflicts, as it is to be cured; what was solved for one conflict serves the others. */
export type Before = {
  service: Service
  schedule: Schedule
  rules: ReadonlySet<ConflictRule>
  solved: Map<string, Service>
}

/** All that is tried, whatever the conflict. */
export const remedies: readonly ((before: Before, rule: ConflictRule) => Remedy | null)[] = [
  eachOff,
  reorder,
  weakerEarly,
  orderAndStrength,
  freshBowl,
  secondHands,
  fewerFoils,
  anotherDay,
]

/** Whether a change takes a conflict away and brings no other. */
export function isFixed({ rules }: Before, changed: Service, rule: ConflictRule): boolean {
  const after = rulesOf(changed)
  return !after.has(rule) && [...after].every((other) => rules.has(other))
}

const rulesOf = (service: Service): Set<ConflictRule> =>
  new Set(findConflicts(service, planService(service)).map((conflict) => conflict.rule))

function eachOff({ service }: Before): Remedy | null {
  if (service.rinse === "each") return null
  const label = "Take each foil off when it is ready"
  return keepingAll("each-off", label, fixCosts.eachOff, { ...service, rinse: "each" })
}

function reorder(before: Before): Remedy | null {
  const after = solvedWith(before, { reorder: true, weaken: false })
  if (isSameOrder(before.service, after)) return null
  return keepingAll("reorder", "Place the foils in another order, slowest first", fixCosts.reorder, after)
}

function weakerEarly(before: Before): Remedy | null {
  const after = solvedWith(before, { reorder: false, weaken: true })
  const weakened = weakenedBetween(before.service, after)
  if (weakened === 0) return null
  const label = `Weaker developer for the first ${foilCount(weakened)}`
  return keepingAll("weaker-early", label, fixCosts.extraBowl, after)
}

function orderAndStrength(before: Before): Remedy | null {
  const after = solvedWith(before, { reorder: true, weaken: true })
  const weakened = weakenedBetween(before.service, after)
  if (weakened === 0 || isSameOrder(before.service, after)) return null
  const label = `Another order, and weaker developer for the first ${foilCount(weakened)}`
  return keepingAll("order-and-strength", label, fixCosts.reorder + fixCosts.extraBowl, after)
}

function freshBowl({ service, schedule }: Before, rule: ConflictRule): Remedy | null {
  const afresh = rule === "pot-life" ? bowlsAfresh(service, schedule) : null
  if (!afresh) return null
  const { after, starts } = afresh
  const numbers = starts.map(({ mapNumber }) => mapNumber).join(", ")
  const label = `Mix ${[...new Set(starts.map(({ mix }) => mix))].join(" and ")} afresh at foil ${numbers}`
  return keepingAll("fresh-bowl", label, fixCosts.extraBowl * starts.length, after)
}

function secondHands({ service }: Before): Remedy | null {
  if (service.hands.length > 1) return null
  const after: Service = {
    ...service,
    hands: [...service.hands, { paceShare: 1, breaks: service.hands[0].breaks }],
  }
  const price = fixCosts.secondHands + fixCosts.secondHandsPerMin * planService(after).lastOnMin
  return keepingAll("second-hands", "A second pair of hands", price, after)
}

function fewerFoils(before: Before, rule: ConflictRule): Remedy | null {
  const { service } = before
  const least = leastKept(service)
  for (let kept = service.foils.length - 1; kept >= least; kept--) {
    const after = keepFirst(service, kept)
    if (!isFixed(before, after, rule)) continue
    const left = leftAfter(service, kept)
    const priceMin = fixCosts.foilLeftOut * left.length
    return {
      kind: "fewer-foils",
      label: `Leave out the last ${foilCount(left.length)}`,
      priceMin,
      after,
      left,
    }
  }
  return null
}

/** Two visits, both without the conflict; as much as possible is done today. */
function anotherDay(before: Before, rule: ConflictRule): Remedy | null {
  const { service } = before
  if (service.soFar) return null
  for (let kept = service.foils.length - 1; kept >= 1; kept--) {
    const after = keepFirst(service, kept)
    const rest = { ...service, foils: service.foils.slice(kept) }
    if (!isFixed(before, after, rule) || !isFixed(before, rest, rule)) continue
    const left = leftAfter(service, kept)
    const label = `Keep the last ${foilCount(left.length)} for another day`
    return { kind: "another-day", label, priceMin: fixCosts.anotherVisit, after, left }
  }
  return null
}

const keepingAll = (kind: FixKind, label: string, priceMin: number, after: Service): Remedy => ({
  kind,
  label,
  priceMin,
  after,
  left: [],
})

function solvedWith({ service, solved }: Before, may: Freedom): Service {
  const key = `${may.reorder} ${may.weaken}`
  const known = solved.get(key) ?? solveOrder(service, may)
  solved.set(key, known)
  return known
}

const isSameOrder = (before: Service, after: Service) =>
  after.foils.every(({ id }, at) => id === before.foils[at].id)

function weakenedBetween(before: Service, after: Service): number {
  const mixBefore = new Map(before.foils.map(({ id, mix }) => [id, mix]))
  return after.foils.filter(({ id, mix }) => mixBefore.get(id) !== mix).length
}

const keepFirst = (service: Service, kept: number): Service => ({
  ...service,
  foils: service.foils.slice(0, kept),
})

const leftAfter = ({ foils }: Service, kept: number) => foils.slice(kept).map(({ id }) => id)

/** Foils that are on stay, and at least one is left. */
const leastKept = ({ foils, soFar }: Service) =>
  Math.max(1, foils.findLastIndex(({ id }) => soFar?.onAtMin[id] !== undefined) + 1)

const foilCount = (count: number) => (count === 1 ? "foil" : `${count} foils`)
