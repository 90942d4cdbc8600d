import { cureCosts } from "../../presets/pace"
import type { ConflictRule } from "./conflicts"
import { findConflicts } from "./conflicts"
import type { Service } from "./scheduleInput"
import { solveOrder } from "./solveOrder"
import type { Schedule } from "./timing"
import { planService } from "./timing"

/** A change of the service that removes a conflict, as planned again, and brings no other. */
export type Cure = {
  kind: CureKind
  label: string
  /** What it costs, counted in minutes of the chair: for ranking. */
  costMin: number
  change: (service: Service) => Service
  /** Foils that this leaves for another day, or out. */
  left: readonly string[]
}
export type CureKind =
  | "each-off"
  | "reorder"
  | "weaker-early"
  | "fresh-bowl"
  | "second-hands"
  | "fewer-foils"
  | "another-day"

type Remedy = Omit<Cure, "costMin"> & { priceMin: number }
type Before = { service: Service; schedule: Schedule; rules: ReadonlySet<ConflictRule> }

/** The cures that work for one conflict of a service, cheapest first. */
export function findCures(service: Service, rule: ConflictRule): Cure[] {
  const schedule = planService(service)
  const before: Before = { service, schedule, rules: rulesOf(service, schedule) }
  return [eachOff, reorder, weakerEarly, freshBowl, secondHands, fewerFoils, anotherDay]
    .map((remedyFor) => remedyFor(before, rule))
    .filter((remedy) => remedy !== null)
    .filter(({ change }) => isCured(before, change(service), rule))
    .map(({ priceMin, ...cure }) => ({
      ...cure,
      costMin: priceMin + chairMinMore(before, cure.change(service)),
    }))
    .sort((a, b) => a.costMin - b.costMin)
}

function eachOff({ service }: Before): Remedy | null {
  if (service.rinse === "each") return null
  return {
    kind: "each-off",
    label: "Take each foil off when it is ready",
    priceMin: cureCosts.eachOff,
    change: (now) => ({ ...now, rinse: "each" }),
    left: [],
  }
}

function reorder({ service }: Before): Remedy | null {
  const order = solveOrder(service, { reorder: true, weaken: false }).foils.map(({ id }) => id)
  if (order.every((id, at) => id === service.foils[at].id)) return null
  return {
    kind: "reorder",
    label: "Place the foils in another order, slowest first",
    priceMin: cureCosts.reorder,
    change: (now) => inOrder(now, order),
    left: [],
  }
}

function weakerEarly({ service }: Before): Remedy | null {
  const solved = solveOrder(service, { reorder: false, weaken: true })
  const mixOf = new Map(solved.foils.map(({ id, mix }) => [id, mix]))
  const weakened = service.foils.filter(({ id, mix }) => mixOf.get(id) !== mix)
  if (weakened.length === 0) return null
  return {
    kind: "weaker-early",
    label: `Weaker developer for the first ${foilCount(weakened.length)}`,
    priceMin: cureCosts.extraBowl,
    change: (now) => withMixes(now, mixOf),
    left: [],
  }
}

/** The largest bowl, in foils of the mix that went stale, that is used up in time. */
function freshBowl(before: Before, rule: ConflictRule): Remedy | null {
  if (rule !== "pot-life") return null
  const { service, schedule } = before
  const stale = schedule.bowls.find(({ lastUseMin, useByMin }) => lastUseMin > useByMin)
  const served = service.foils.filter(({ id }) => stale?.foils.includes(id))
  for (let most = served.length - 1; stale && most >= 1; most--) {
    const change = (now: Service) => withBowl(now, stale.mix, sumG(served.slice(0, most)))
    if (isCured(before, change(service), rule)) return mixOftener(stale.mix, most, change)
  }
  return null
}

const mixOftener = (mix: string, most: number, change: Remedy["change"]): Remedy => ({
  kind: "fresh-bowl",
  label: `Mix ${mix} afresh for every ${foilCount(most)}`,
  priceMin: cureCosts.extraBowl,
  change,
  left: [],
})

function secondHands({ service }: Before): Remedy | null {
  if (service.hands.length > 1) return null
  const change = (now: Service): Service => ({ ...now, hands: [...now.hands, { paceShare: 1, breaks: [] }] })
  return {
    kind: "second-hands",
    label: "A second pair of hands",
    priceMin: cureCosts.secondHands + cureCosts.secondHandsPerMin * planService(change(service)).lastOnMin,
    change,
    left: [],
  }
}

function fewerFoils(before: Before, rule: ConflictRule): Remedy | null {
  const { service } = before
  const least = leastKept(service)
  for (let kept = service.foils.length - 1; kept >= least; kept--) {
    const change = (now: Service) => keepFirst(now, kept)
    if (isCured(before, change(service), rule)) return leaveOut(service, kept, change)
  }
  return null
}

function leaveOut({ foils }: Service, kept: number, change: Remedy["change"]): Remedy {
  const left = foils.slice(kept).map(({ id }) => id)
  const priceMin = cureCosts.foilLeftOut * left.length
  return {
    kind: "fewer-foils",
    label: `Leave out the last ${foilCount(left.length)}`,
    priceMin,
    change,
    left,
  }
}

/** Two visits, both without the conflict; as much as possible is done today. */
function anotherDay(before: Before, rule: ConflictRule): Remedy | null {
  const { service } = before
  if (service.soFar) return null
  for (let kept = service.foils.length - 1; kept >= 1; kept--) {
    const rest = { ...service, foils: service.foils.slice(kept) }
    const change = (now: Service) => keepFirst(now, kept)
    if (isCured(before, change(service), rule) && isCured(before, rest, rule))
      return visitAgain(service, kept, change)
  }
  return null
}

function visitAgain({ foils }: Service, kept: number, change: Remedy["change"]): Remedy {
  const left = foils.slice(kept).map(({ id }) => id)
  const label = `Keep the last ${foilCount(left.length)} for another day`
  return { kind: "another-day", label, priceMin: cureCosts.anotherVisit, change, left }
}

function isCured({ rules }: Before, changed: Service, rule: ConflictRule): boolean {
  const after = rulesOf(changed, planService(changed))
  return !after.has(rule) && [...after].every((other) => rules.has(other))
}

const rulesOf = (service: Service, schedule: Schedule): Set<ConflictRule> =>
  new Set(findConflicts(service, schedule).map((conflict) => conflict.rule))

const chairMinMore = ({ schedule }: Before, changed: Service) =>
  Math.max(0, planService(changed).chairMin.mid - schedule.chairMin.mid)

const keepFirst = (service: Service, kept: number): Service => ({
  ...service,
  foils: service.foils.slice(0, kept),
})

/** Foils that are on stay, and at least one is left. */
const leastKept = ({ foils, soFar }: Service) =>
  Math.max(1, foils.findLastIndex(({ id }) => soFar?.onAtMin[id] !== undefined) + 1)

function inOrder(service: Service, order: readonly string[]): Service {
  const at = new Map(order.map((id, index) => [id, index]))
  const last = order.length
  const foils = [...service.foils].sort((a, b) => (at.get(a.id) ?? last) - (at.get(b.id) ?? last))
  return { ...service, foils, bowls: null }
}

const withMixes = (service: Service, mixOf: ReadonlyMap<string, string>): Service => ({
  ...service,
  foils: service.foils.map((foil) => ({ ...foil, mix: mixOf.get(foil.id) ?? foil.mix })),
  bowls: null,
})

const withBowl = (service: Service, mix: string, bowlG: number): Service => ({
  ...service,
  bowls: null,
  mixes: service.mixes.map((row) => (row.id === mix ? { ...row, bowlG } : row)),
})

const sumG = (foils: Service["foils"]) => foils.reduce((total, { productG }) => total + productG.high, 0)
const foilCount = (count: number) => (count === 1 ? "foil" : `${count} foils`)
