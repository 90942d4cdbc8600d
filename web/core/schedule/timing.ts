import type { Range } from "../../../geometry/hair/tradeFigures"
import type { Step } from "./scheduleFinish"
import { scheduleFinish } from "./scheduleFinish"
import { coatsReadyOn, type HeatTimes } from "./scheduleHeat"
import type { End, Service } from "./scheduleInput"
import { goesOnLater, laterBy } from "./scheduleInput"
import { isSeen, lookRounds } from "./scheduleLooks"
import type { MixedBowl, PlacedFoil } from "./schedulePlacing"
import { schedulePlacing } from "./schedulePlacing"

/** The clock of a service. `…AtMin` is a minute of the service; other minutes are minutes on. */
export type Schedule = {
  /** In order of application. */
  foils: readonly FoilTimes[]
  bowls: readonly BowlTimes[]
  /** Rounds of looking. */
  looksAtMin: readonly number[]
  heat: HeatTimes | null
  firstOnMin: number
  lastOnMin: number
  /** When the last foil is off and the rinse begins. */
  rinseMin: number
  /** Foils in the order they come off. */
  offOrder: readonly string[]
  steps: readonly Step[]
  /** From the first parting to dry hair. */
  chairMin: Range
}

export type FoilTimes = {
  id: string
  /** Which pair of hands placed it; null where that has already happened. */
  person: number | null
  /** One for each mix along its strand. */
  bowls: readonly number[]
  onAtMin: number
  placedAtMin: number
  /** When its roots go on, and it is closed again, where that is later. */
  rootsOnAtMin?: number | undefined
  rootsPlacedAtMin?: number | undefined
  readyMin: Range
  readyAtMin: Range
  /** The same of each mix along its strand, in the order they go on. */
  coatsReadyAtMin: readonly Range[]
  limitAtMin: number
  offAtMin: number
  onMin: number
  looksAtMin: readonly number[]
}

export type BowlTimes = {
  mix: string
  foils: readonly string[]
  /** When to begin mixing. */
  atMin: number
  mixedAtMin: number
  lastUseMin: number
  useByMin: number
}

/** The whole service in minutes. The input must have no `serviceProblems`. */
export function planService(service: Service): Schedule {
  const { foils, bowls, heat } = schedulePlacing(service, "mid")
  const looksAtMin = lookRounds(foils, service.looks, heat)
  const rinseMin = lastOff(foils)
  const steps = scheduleFinish(service, rinseMin, "mid")
  return {
    foils: foils.map((placed) => foilTimes(placed, { looksAtMin, heat, service })),
    bowls: bowls.map((bowl, at) => bowlTimes(bowl, at, foils)),
    looksAtMin,
    heat,
    firstOnMin: Math.min(...foils.map(({ onAtMin }) => onAtMin)),
    lastOnMin: Math.max(...foils.map(({ onAtMin }) => onAtMin)),
    rinseMin,
    offOrder: [...foils].sort((a, b) => a.offAtMin - b.offAtMin).map(({ foil }) => foil.id),
    steps,
    chairMin: {
      low: chairMinAt(service, "low"),
      mid: lastStep(steps, rinseMin),
      high: chairMinAt(service, "high"),
    },
  }
}

type Around = { looksAtMin: readonly number[]; heat: HeatTimes | null; service: Service }

function foilTimes(placed: PlacedFoil, { looksAtMin, heat, service }: Around): FoilTimes {
  const { foil, person, bowls, onAtMin, placedAtMin, offAtMin, rootsOn, limitAtMin } = placed
  const { low, mid, high } = placed.readyMin
  return {
    id: foil.id,
    person,
    bowls,
    onAtMin,
    placedAtMin,
    rootsOnAtMin: rootsOn?.onAtMin,
    rootsPlacedAtMin: rootsOn?.placedAtMin,
    readyMin: { low, mid, high },
    readyAtMin: laterBy(placed.readyMin, onAtMin),
    coatsReadyAtMin: coatsReadyOn({ heat, service }, placed).map((range) => laterBy(range, onAtMin)),
    limitAtMin,
    offAtMin,
    onMin: offAtMin - onAtMin,
    looksAtMin: looksAtMin.filter((atMin) => isSeen(placed, atMin, service.looks)),
  }
}

function bowlTimes(
  { mix, foils, atMin, mixedAtMin }: MixedBowl,
  bowl: number,
  placed: readonly PlacedFoil[],
): BowlTimes {
  const uses = placed
    .filter(({ bowls }) => bowls.includes(bowl))
    .flatMap(({ foil, placedAtMin, rootsOn }) =>
      goesOnLater(foil, mix.id) ? (rootsOn?.placedAtMin ?? []) : placedAtMin,
    )
  const ids = foils.map(({ id }) => id)
  const useByMin = mixedAtMin + mix.potLifeMin
  return {
    mix: mix.id,
    foils: ids,
    atMin,
    mixedAtMin,
    lastUseMin: uses.length > 0 ? Math.max(...uses) : mixedAtMin,
    useByMin,
  }
}

/** How long the client sits, from the first parting to dry hair, at one end of every range. */
export function chairMinAt(service: Service, end: End): number {
  const rinseMin = lastOff(schedulePlacing(service, end).foils)
  return lastStep(scheduleFinish(service, rinseMin, end), rinseMin)
}

const lastOff = (foils: readonly PlacedFoil[]) => Math.max(...foils.map(({ offAtMin }) => offAtMin))
const lastStep = (steps: readonly Step[], rinseMin: number) =>
  Math.max(rinseMin, ...steps.map(({ toMin }) => toMin))
