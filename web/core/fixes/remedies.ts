import { fixCosts, mostBookedMin } from "../../../presets/timing/pace"
import type { ConflictRule } from "../schedule/conflicts"
import { findConflicts } from "../schedule/conflicts"
import type { Service, TimedFoil } from "../schedule/scheduleInput"
import { type Freedom, solveOrder } from "../schedule/solveOrder"
import type { Schedule } from "../schedule/timing"
import { planService } from "../schedule/timing"
import type { Fix, FixCode } from "./fix"
import { bowlsAfresh } from "./freshBowls"
import { spreadOut } from "./spreadOut"

/** A change that may cure, and what it costs beside the minutes of the chair. */
export type Remedy = FixCode & Pick<Fix, "after" | "left"> & { priceMin: number }
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
  noDrying,
  laterEnd,
  secondColourist,
  fewerFoils,
  anotherDay,
]

/** Whether a change takes a conflict away and brings no other. */
export function isFixed({ rules }: Before, changed: Service, rule: ConflictRule): boolean {
  const after = rulesOf(changed)
  return !after.has(rule) && [...after].every((other) => rules.has(other))
}

const rulesOf = (service: Service): Set<ConflictRule> =>
  new Set(findConflicts(service, planService(service)).map((conflict) => conflict.code))

function eachOff({ service }: Before): Remedy | null {
  if (service.rinse === "each") return null
  return keepingAll({ code: "each-off" }, fixCosts.eachOff, { ...service, rinse: "each" })
}

function reorder(before: Before): Remedy | null {
  const after = solvedWith(before, { reorder: true, weaken: false })
  if (isSameOrder(before.service, after)) return null
  return keepingAll({ code: "reorder" }, fixCosts.reorder, after)
}

function weakerEarly(before: Before): Remedy | null {
  const after = solvedWith(before, { reorder: false, weaken: true })
  const count = weakenedBetween(before.service, after)
  return count === 0 ? null : keepingAll({ code: "weaker-early", count }, fixCosts.extraBowl, after)
}

function orderAndStrength(before: Before): Remedy | null {
  const after = solvedWith(before, { reorder: true, weaken: true })
  const count = weakenedBetween(before.service, after)
  if (count === 0 || isSameOrder(before.service, after)) return null
  return keepingAll({ code: "order-and-strength", count }, fixCosts.reorder + fixCosts.extraBowl, after)
}

function freshBowl({ service, schedule }: Before, rule: ConflictRule): Remedy | null {
  const afresh = rule === "pot-life" ? bowlsAfresh(service, schedule) : null
  if (!afresh) return null
  const { after, starts } = afresh
  const mixes = [...new Set(afresh.mixes)]
  const foils = [...new Set(starts.map(({ mapNumber }) => mapNumber))]
  return keepingAll({ code: "fresh-bowl", mixes, foils }, fixCosts.extraBowl * starts.length, after)
}

function secondColourist({ service }: Before): Remedy | null {
  if (service.hands.length > 1) return null
  const after: Service = {
    ...service,
    hands: [...service.hands, { paceShare: 1, breaks: service.hands[0].breaks }],
  }
  const price = fixCosts.secondHands + fixCosts.secondHandsPerMin * planService(after).lastOnMin
  return keepingAll({ code: "second-colourist" }, price, after)
}

/** The client goes home with damp hair. */
function noDrying({ service }: Before, rule: ConflictRule): Remedy | null {
  const savesMin = service.finish.dryingMin.mid
  if (rule !== "booking" || savesMin === 0) return null
  const after = { ...service, finish: { ...service.finish, dryingMin: { low: 0, mid: 0, high: 0 } } }
  return keepingAll({ code: "no-drying", savesMin }, fixCosts.noDrying, after)
}

/** The appointment is made longer, to the next quarter of an hour. */
function laterEnd({ service, schedule }: Before, rule: ConflictRule): Remedy | null {
  if (rule !== "booking" || service.bookingMin === null) return null
  const bookingMin = Math.ceil(schedule.chairMin.mid / quarterMin - 1e-9) * quarterMin
  const byMin = bookingMin - service.bookingMin
  if (bookingMin > mostBookedMin) return null
  return keepingAll({ code: "later-end", bookingMin, byMin }, fixCosts.laterEnd + byMin, {
    ...service,
    bookingMin,
  })
}

/** As few as do it, taken from both sides alike and from all along them: a frame that is thinner, never one with a hole. */
function fewerFoils(before: Before, rule: ConflictRule): Remedy | null {
  const { service } = before
  const free = notYetOn(service)
  const most = Math.min(free.length, service.foils.length - 1)
  for (let count = 1; count <= most; count++) {
    const left = spreadOut(free, count)
    const after = without(service, left)
    if (left.length === 0 || !isFixed(before, after, rule)) continue
    const foils = numbersOf(left)
    return { ...leaving({ code: "fewer-foils", foils }, left), priceMin: fixCosts.foilLeftOut * count, after }
  }
  return null
}

/** Two visits, both without the conflict; as much as possible is done today, on both sides alike. */
function anotherDay(before: Before, rule: ConflictRule): Remedy | null {
  const { service } = before
  if (service.soFar) return null
  for (let count = 1; count < service.foils.length; count++) {
    const left = spreadOut(service.foils, count)
    const after = without(service, left)
    const rest = { ...service, foils: left }
    if (left.length === 0 || !isFixed(before, after, rule) || !isFixed(before, rest, rule)) continue
    const foils = numbersOf(left)
    return { ...leaving({ code: "another-day", foils }, left), priceMin: fixCosts.anotherVisit, after }
  }
  return null
}

const quarterMin = 15

const keepingAll = (code: FixCode, priceMin: number, after: Service): Remedy => ({
  ...code,
  priceMin,
  after,
  left: [],
})

const leaving = (code: FixCode, left: readonly TimedFoil[]) => ({ ...code, left: left.map(({ id }) => id) })

const numbersOf = (foils: readonly TimedFoil[]) =>
  foils.map(({ mapNumber }) => mapNumber).sort((a, b) => a - b)

function solvedWith({ service, solved }: Before, may: Freedom): Service {
  const key = `${may.reorder} ${may.weaken}`
  const known = solved.get(key) ?? solveOrder(service, { ...may, mayTakeLonger: true })
  solved.set(key, known)
  return known
}

const isSameOrder = (before: Service, after: Service) =>
  after.foils.every(({ id }, at) => id === before.foils[at].id)

function weakenedBetween(before: Service, after: Service): number {
  const mixBefore = new Map(before.foils.map(({ id, mix }) => [id, mix]))
  return after.foils.filter(({ id, mix }) => mixBefore.get(id) !== mix).length
}

const without = (service: Service, left: readonly TimedFoil[]): Service => ({
  ...service,
  foils: service.foils.filter((foil) => !left.includes(foil)),
})

/** Foils that are on stay. */
const notYetOn = ({ foils, soFar }: Service) => foils.filter(({ id }) => soFar?.onAtMin[id] === undefined)
