import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { findConflicts } from "../../../../web/core/schedule/conflicts"
import type { Service, SoFar, TimedFoil } from "../../../../web/core/schedule/scheduleInput"
import { serviceProblems } from "../../../../web/core/schedule/scheduleProblems"
import { readySpreadMin, solveOrder } from "../../../../web/core/schedule/solveOrder"
import { planService } from "../../../../web/core/schedule/timing"
import { anyService } from "../../../support/orderServices"
import { always, foilsAlike, person, timedMix, timedService } from "../../../support/timedService"

/** Ends ready after 30, off by 45; roots 15 minutes later in a minute, ready 20 after, off 25 after at the latest. */
const later = { afterMin: 15, placeMin: always(1), limitMin: 25 }
const rooted: Partial<TimedFoil> = {
  placeMin: always(2),
  limitMin: 45,
  readyMin: { A: always(30) },
  roots: { mix: "B", first: "ends", readyMin: always(20), productG: always(1), later },
}
const withLimit = (limitMin: number): Partial<TimedFoil> => ({
  ...rooted,
  roots: {
    mix: "B",
    first: "ends",
    readyMin: always(20),
    productG: always(1),
    later: { ...later, limitMin },
  },
})
const mixes = [timedMix("A"), timedMix("B")]
const service = (foils: readonly TimedFoil[], change: Partial<Service> = {}) =>
  timedService(foils, { mixes, ...change })
const soFar = (change: Partial<SoFar>): SoFar => ({
  nowMin: 0,
  onAtMin: {},
  offAtMin: {},
  mixedAtMin: [],
  ...change,
})

describe("roots that go on fifteen minutes after the ends", () => {
  const [one] = planService(service(foilsAlike(1, rooted))).foils

  it("have a start of their own", () => {
    expect([one.onAtMin, one.placedAtMin, one.rootsOnAtMin, one.rootsPlacedAtMin]).toEqual([0, 2, 15, 16])
  })

  it("are ready with the later of both: the ends at 30, the roots at 15 + 20", () => {
    expect(one.coatsReadyAtMin.map(({ mid }) => mid)).toEqual([30, 35])
    expect([one.readyAtMin.mid, one.offAtMin]).toEqual([35, 35])
  })

  it("are off by the sooner limit, each counted from its own start: 45, and 15 + 25", () => {
    expect(one.limitAtMin).toBe(40)
    const [short] = planService(service(foilsAlike(1, withLimit(15)))).foils
    expect([short.limitAtMin, short.offAtMin]).toEqual([30, 30])
  })

  it("come off with the rest in one rinse, at the first limit of any", () => {
    const foils = [...foilsAlike(1, withLimit(17)), ...foilsAlike(2, { limitMin: 60 }).slice(1)]
    const { rinseMin } = planService(service(foils, { rinse: "together" }))
    expect(rinseMin).toBe(32)
  })

  it("have their bowl mixed when they come due, not before", () => {
    const { bowls } = planService(service(foilsAlike(1, rooted)))
    expect(bowls.map(({ mix, mixedAtMin, lastUseMin }) => [mix, mixedAtMin, lastUseMin])).toEqual([
      ["A", 0, 2],
      ["B", 15, 16],
    ])
  })

  it("wait for the next free moment where the hands are busy: the fourth foil lasts to minute 16", () => {
    const [first] = foilsAlike(1, { ...rooted, placeMin: always(4) })
    const rest = foilsAlike(6, { placeMin: always(4) }).slice(1)
    const { foils } = planService(service([first, ...rest]))
    expect(foils[0].rootsOnAtMin).toBe(16)
    expect(foils.map(({ onAtMin }) => onAtMin)).toEqual([0, 4, 8, 12, 17, 21])
    const helped = planService(service([first, ...rest], { hands: [person(), person()] }))
    expect(helped.foils[0].rootsOnAtMin).toBe(15)
  })

  it("cannot go on when the ends are at their longest time", () => {
    const problems = (limitMin: number) => serviceProblems(service(foilsAlike(1, { ...rooted, limitMin })))
    expect(problems(15.5)).toEqual([])
    expect(problems(15)).toEqual([{ code: "roots-after-limit", foil: 1, afterMin: 15, limitMin: 15 }])
  })

  it("are opened under no heat: it comes when they are closed", () => {
    const heated = service(foilsAlike(1, rooted), {
      mixes: mixes.map((mix) => ({ ...mix, heatMostMin: 10 })),
      heat: { minutes: 5, warmthC: 34 },
    })
    expect(planService(heated).heat?.onAtMin).toBe(16)
  })
})

describe("while it happens", () => {
  const at = (nowMin: number, change: Partial<SoFar> = {}) =>
    service(foilsAlike(1, rooted), {
      soFar: soFar({ nowMin, onAtMin: { f1: 2 }, mixedAtMin: [0], ...change }),
    })

  it("roots that nobody tapped are to come, and their limit does not run", () => {
    const [foil] = planService(at(22)).foils
    expect([foil.rootsOnAtMin, foil.readyAtMin.mid, foil.limitAtMin]).toEqual([22, 42, 47])
  })

  it("roots that were tapped count from there", () => {
    const [foil] = planService(at(22, { rootsOnAtMin: { f1: 19 }, mixedAtMin: [0, 18] })).foils
    expect([foil.rootsOnAtMin, foil.readyAtMin.mid, foil.limitAtMin]).toEqual([19, 39, 44])
  })

  it("ends at their longest time come off without: they are not expected to be ready", () => {
    const late = at(50)
    const schedule = planService(late)
    expect([schedule.foils[0].rootsOnAtMin, schedule.foils[0].offAtMin]).toEqual([undefined, 50])
    expect(findConflicts(late, schedule)).toContainEqual(
      expect.objectContaining({ code: "under-processed", needsMin: null }),
    )
  })

  it("a foil that came off without them leaves its bowl unmixed", () => {
    const { bowls } = planService(at(30, { offAtMin: { f1: 25 } }))
    expect(bowls.map(({ mixedAtMin, lastUseMin }) => [mixedAtMin, lastUseMin])).toEqual([
      [0, 2],
      [30, 30],
    ])
  })
})

/** Any service, in which some foils have roots that go on later. */
const anyRooted = fc
  .tuple(
    anyService(7, 3),
    fc.array(fc.option(fc.integer({ min: 1, max: 25 })), { minLength: 7, maxLength: 7 }),
    fc.constantFrom("each" as const, "together" as const),
  )
  .map(([given, afters, rinse]): Service => {
    const foils = given.foils.map((foil, i): TimedFoil => {
      const afterMin = afters[i]
      if (afterMin === null) return foil
      const own = { afterMin, placeMin: always(1), limitMin: 30 }
      return {
        ...foil,
        roots: { mix: "B", first: "ends", readyMin: always(18), productG: always(1), later: own },
      }
    })
    return { ...given, foils, rinse }
  })

describe("any service with roots that go on later", () => {
  it("opens each once, not before its minutes, one pair of hands at one thing, and closes it before it is off", () => {
    fc.assert(
      fc.property(anyRooted, (of) => {
        const { foils, bowls } = planService(of)
        const work: [number, number][] = []
        for (const [i, times] of foils.entries()) {
          const { onAtMin, placedAtMin, rootsOnAtMin, rootsPlacedAtMin = 0, offAtMin, limitAtMin } = times
          const roots = of.foils[i].roots?.later
          work.push([onAtMin, placedAtMin])
          if (!roots) expect(rootsOnAtMin).toBeUndefined()
          if (!roots || rootsOnAtMin === undefined) continue
          work.push([rootsOnAtMin, rootsPlacedAtMin])
          expect(rootsOnAtMin).toBeGreaterThanOrEqual(onAtMin + roots.afterMin)
          expect(offAtMin).toBeGreaterThanOrEqual(rootsPlacedAtMin)
          expect(limitAtMin).toBeCloseTo(
            Math.min(onAtMin + of.foils[i].limitMin, rootsOnAtMin + roots.limitMin),
            9,
          )
        }
        for (const { mixedAtMin, lastUseMin } of bowls) expect(lastUseMin).toBeGreaterThanOrEqual(mixedAtMin)
        if (of.hands.length > 1) return
        const inTurn = work.toSorted((a, b) => a[0] - b[0])
        for (const [i, [from]] of inTurn.entries())
          if (i > 0) expect(from).toBeGreaterThanOrEqual(inTurn[i - 1][1] - 1e-9)
      }),
      { numRuns: 300 },
    )
  })

  it("is never ordered worse than it was given", () => {
    fc.assert(
      fc.property(anyRooted, (of) => {
        const solved = solveOrder(of, { reorder: true, weaken: true })
        expect(readySpreadMin(solved)).toBeLessThanOrEqual(readySpreadMin(of) + 1e-9)
        expect(planService(solved).chairMin.mid).toBeLessThanOrEqual(planService(of).chairMin.mid + 1e-9)
      }),
      { numRuns: 6 },
    )
  })
})
