import fc from "fast-check"
import type { Service, TimedFoil } from "../../web/core/schedule/scheduleInput"
import { readySpreadMin } from "../../web/core/schedule/solveOrder"
import { planService } from "../../web/core/schedule/timing"
import { always, person, timedFoil, timedMix, timedService } from "./timedService"

/** Three mixes, each weaker than the one before. */
export const mixes = [
  timedMix("A", { onHeadPercent: 6, mixingMin: always(1) }),
  timedMix("B", { onHeadPercent: 4, mixingMin: always(1) }),
  timedMix("C", { onHeadPercent: 2 }),
]
export const strength: Readonly<Record<string, number>> = { A: 6, B: 4, C: 2 }

/** Any service: foils of their own pace and of their own time in each mix, a weaker one being slower. */
export const anyService = (most: number, groups: number, least = 1) =>
  fc
    .record({
      foils: fc.array(
        fc.record({
          quarters: fc.integer({ min: 3, max: 16 }),
          ready: fc.integer({ min: 12, max: 40 }),
          slower: fc.integer({ min: 0, max: 12 }),
          group: fc.integer({ min: 1, max: groups }),
          zone: fc.constantFrom("hairline" as const, "top" as const),
        }),
        { minLength: least, maxLength: most },
      ),
      hands: fc.constantFrom([person()], [person(), person()]),
      partingMin: fc.constantFrom(always(0), always(2)),
    })
    .map(({ foils, ...change }) =>
      timedService(
        foils.map(({ quarters, ready, slower, group, zone }, at) =>
          timedFoil(`f${at}`, {
            placeMin: always(quarters / 4),
            group: `g${groups > most ? at : group}`,
            zone,
            readyMin: { A: always(ready), B: always(ready + slower), C: always(ready + 2 * slower) },
          }),
        ),
        { ...change, mixes },
      ),
    )

/** Whether the client sits no longer than in a plan. */
export const isNoLonger = (given: Service) => {
  const mostMin = planService(given).chairMin.mid + 1e-9
  return (other: Service) => planService(other).chairMin.mid <= mostMin
}

/** Brute force: every order of single foils, every mix as weak or weaker of the first so many, of those that are allowed. */
export function closestOfAll(service: Service, isAllowed = isNoLonger(service)): number {
  let least = readySpreadMin(service)
  const look = (other: Service) => {
    const min = readySpreadMin(other)
    if (min < least && isAllowed(other)) least = min
  }
  const visit = (made: readonly TimedFoil[], left: readonly TimedFoil[], mayWeaken: boolean) => {
    if (left.length === 0) look({ ...service, foils: made })
    for (const foil of left) {
      const rest = left.filter((other) => other !== foil)
      visit([...made, foil], rest, false)
      for (const mix of mayWeaken ? weakerMixes(foil) : []) visit([...made, { ...foil, mix }], rest, true)
    }
  }
  visit([], service.foils, true)
  return least
}

const weakerMixes = ({ mix, readyMin, limitMin }: TimedFoil) =>
  Object.keys(readyMin).filter((other) => strength[other] < strength[mix] && readyMin[other].mid <= limitMin)

/** 14 working sections, each with its own time in three mixes; a weaker one is slower. */
export function fourteenSections(seed: number): Service {
  let state = seed * 7919 + 13
  const even = () => {
    state = (state * 16807) % 2147483647
    return state / 2147483647
  }
  for (let i = 0; i < 5; i++) even()
  const foils = Array.from({ length: 14 }, (_, group) => {
    const [count, base, slower] = [2 + Math.floor(even() * 4), 14 + 18 * even(), 2 + 8 * even()]
    return Array.from({ length: count }, (_, k) => {
      const ready = Math.round(base + 4 * even())
      return timedFoil(`f${group}-${k}`, {
        group: `g${group}`,
        zone: even() < 0.2 ? "hairline" : "top",
        placeMin: always(1 + 2 * even()),
        readyMin: { A: always(ready), B: always(ready + slower), C: always(ready + 2 * slower) },
      })
    })
  }).flat()
  return timedService(foils, { mixes, partingMin: always(1) })
}
