import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { closestTogether } from "../../../../web/core/fixes/closestTogether"
import { findFixes, searchFixes } from "../../../../web/core/fixes/fixes"
import type { ConflictRule } from "../../../../web/core/schedule/conflicts"
import { findConflicts } from "../../../../web/core/schedule/conflicts"
import type { Service } from "../../../../web/core/schedule/scheduleInput"
import { planService } from "../../../../web/core/schedule/timing"
import { always, foilsAlike, person, timedFoil, timedMix, timedService } from "../../../support/timedService"

const rulesOf = (service: Service) => findConflicts(service, planService(service)).map(({ rule }) => rule)
const kindsOf = (service: Service, rule: ConflictRule) => findFixes(service, rule).map(({ kind }) => kind)
const cureOf = (service: Service, rule: ConflictRule, kind: string) => {
  const cure = findFixes(service, rule).find((each) => each.kind === kind)
  if (!cure) throw new Error(`No cure ${kind}`)
  return cure
}

describe("a last foil under-processed, 25 foils in one rinse", () => {
  const service = timedService(foilsAlike(25), { rinse: "together" })
  it("is cured by each off when ready first, then a second pair of hands, leaving some for another day, fewer", () =>
    // Two pairs: the last on at 12 x 1.5 = 18, 27 minutes left. Thirteen fit today and twelve another day.
    expect(kindsOf(service, "under-processed")).toEqual([
      "each-off",
      "second-hands",
      "another-day",
      "fewer-foils",
    ]))
  it("keeps as many foils as fit", () => {
    const fewer = cureOf(service, "under-processed", "fewer-foils")
    expect(fewer.label).toBe("Leave out the last 12 foils")
    expect(fewer.after.foils).toHaveLength(13)
    expect(fewer.left[0]).toBe("f14")
  })
  it("costs that someone must be free, and until the last is on", () =>
    expect(cureOf(service, "under-processed", "second-hands").costMin).toBe(20 + 18))
})

describe("one cure each", () => {
  it("places the slow ones first where that lets all fit", () => {
    // In this order the slow foil has 45 - 16 = 29 minutes of its 40; first, it has all it needs.
    const foils = [
      ...foilsAlike(4, { placeMin: always(4), readyMin: { A: always(20) } }),
      timedFoil("slow", { group: "two", readyMin: { A: always(40) } }),
    ]
    const service = timedService(foils, { rinse: "together" })
    const reorder = cureOf(service, "under-processed", "reorder")
    expect(reorder.after.foils[0].id).toBe("slow")
    expect(rulesOf(reorder.after)).toEqual([])
  })
  it("weakens the early mix where the hairline would be ahead of the back", () => {
    const mixes = [timedMix("A", { onHeadPercent: 4 }), timedMix("B", { onHeadPercent: 2 })]
    const front = timedFoil("front", { zone: "hairline", readyMin: { A: always(20), B: always(28) } })
    const service = timedService([front, timedFoil("nape", { zone: "back", group: "two" })], {
      mixes,
      rinse: "together",
    })
    const weaker = cureOf(service, "hairline-ahead", "weaker-early")
    expect(weaker.after.foils.map(({ mix }) => mix)).toEqual(["B", "A"])
    expect(weaker.label).toBe("Weaker developer for the first foil")
  })
  it("mixes afresh in time for a bowl that would go stale, in the largest bowls that do", () => {
    // 5 minutes a foil, good for 12: two foils a bowl.
    const service = timedService(foilsAlike(6, { placeMin: always(5) }), {
      mixes: [timedMix("A", { potLifeMin: 12 })],
    })
    const fresh = cureOf(service, "pot-life", "fresh-bowl")
    expect(fresh.label).toBe("Mix A afresh at foil 3, 5")
    expect(planService(fresh.after).bowls.map(({ foils }) => foils.length)).toEqual([2, 2, 2])
  })
  it("asks for a second pair of hands or fewer foils where the booking is too short", () => {
    const service = timedService(foilsAlike(20), { bookingMin: 45 }) // 28.5 + 26 = 54.5; with two 13.5 + 26
    expect(kindsOf(service, "booking")).toEqual(["second-hands", "another-day", "fewer-foils"])
  })
  it("moves no foil that is already on", () => {
    const soFar = { nowMin: 12, onAtMin: { f1: 0, f2: 2, f3: 9 }, offAtMin: {}, mixedAtMin: [] }
    const service = timedService(foilsAlike(25), { rinse: "together", soFar })
    for (const { after } of findFixes(service, "under-processed"))
      expect(after.foils.slice(0, 3).map(({ id }) => id)).toEqual(["f1", "f2", "f3"])
  })
})

describe("a search", () => {
  const service = timedService(foilsAlike(40), { rinse: "together", bookingMin: 60 })
  const rules = rulesOf(service)
  it("says how far it has come, and gives the cures of a conflict as soon as all are tried", () => {
    const steps = [...searchFixes(service, rules)]
    expect(rules.length).toBeGreaterThan(1)
    expect(steps.map(({ done }) => done)).toEqual(steps.map((_, at) => at + 1))
    expect(steps.at(-1)).toMatchObject({ done: steps.length, of: steps.length })
    expect(steps.flatMap(({ found }) => found?.rule ?? [])).toEqual(rules)
    for (const { found } of steps) if (found) expect(found.cures).toEqual(findFixes(service, found.rule))
  })
  it("does no more work once nobody asks", () => {
    const [first] = searchFixes(service, rules)
    expect(first).toMatchObject({ done: 1, found: null })
  })
  it("offers order and strength at once only where neither alone is enough", () => {
    for (const rule of rules) {
      const kinds = kindsOf(service, rule)
      if (kinds.includes("order-and-strength")) expect(kinds).not.toContain("reorder")
    }
  })
})

describe("closest together", () => {
  const slow = timedFoil("slow", { group: "two", readyMin: { A: always(40) } })
  const service = timedService([...foilsAlike(4, { readyMin: { A: always(20) } }), slow])
  it("says how far apart the foils come now and then", () => {
    // At 0 to 4.5 and ready 20 later, the slow one on at 6: 20 against 46. Slow first: 40 against 21.5.
    expect(closestTogether(service)).toMatchObject({ nowMin: 26, thenMin: 18.5 })
  })
  it("is offered only where it is closer, and brings no conflict", () => {
    expect(closestTogether(timedService(foilsAlike(1)))).toBeNull()
    const found = closestTogether(service)
    expect(rulesOf(found?.cure.after ?? service)).toEqual([])
  })
})

describe("every cure of any service", () => {
  const foil = fc.record({
    placeMin: fc.integer({ min: 2, max: 12 }).map((half) => always(half / 2)),
    ready: fc.integer({ min: 10, max: 44 }),
    zone: fc.constantFrom("hairline" as const, "top" as const, "back" as const),
    group: fc.constantFrom("one", "two", "three"),
  })
  const service = fc
    .record({
      foils: fc.array(foil, { minLength: 1, maxLength: 16 }),
      rinse: fc.constantFrom("each" as const, "together" as const),
      hands: fc.constantFrom([person()], [person(), person()]),
      bookingMin: fc.constantFrom(null, 60, 90),
    })
    .map(({ foils, ...change }) =>
      timedService(
        foils.map(({ ready, ...foil }, at) =>
          timedFoil(`f${at}`, { ...foil, readyMin: { A: always(ready), B: always(ready * 1.3) } }),
        ),
        { ...change, mixes: [timedMix("A", { potLifeMin: 30 }), timedMix("B", { onHeadPercent: 3 })] },
      ),
    )
  it("removes its conflict, brings no other, leaves the service as it was, and they are ranked", () =>
    fc.assert(
      fc.property(service, (given) => {
        const before = rulesOf(given)
        const copy = structuredClone(given)
        for (const rule of before) {
          const cures = findFixes(given, rule)
          for (const cure of cures) {
            const after = rulesOf(cure.after)
            expect(after).not.toContain(rule)
            expect(before).toEqual(expect.arrayContaining(after))
          }
          const costs = cures.map(({ costMin }) => costMin)
          expect(costs).toEqual([...costs].sort((a, b) => a - b))
        }
        expect(given).toEqual(copy)
      }),
      { numRuns: 40 },
    ))
})
