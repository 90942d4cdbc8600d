import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { closestTogether } from "../../../../web/core/fixes/closestTogether"
import { findFixes, searchFixes } from "../../../../web/core/fixes/fixes"
import type { ConflictRule } from "../../../../web/core/schedule/conflicts"
import { findConflicts } from "../../../../web/core/schedule/conflicts"
import type { Service } from "../../../../web/core/schedule/scheduleInput"
import { planService } from "../../../../web/core/schedule/timing"
import { always, foilsAlike, person, timedFoil, timedMix, timedService } from "../../../support/timedService"

const rulesOf = (service: Service) => findConflicts(service, planService(service)).map(({ code }) => code)
const kindsOf = (service: Service, rule: ConflictRule) => findFixes(service, rule).map(({ code }) => code)
const cureOf = (service: Service, rule: ConflictRule, kind: string) => {
  const cure = findFixes(service, rule).find((each) => each.code === kind)
  if (!cure) throw new Error(`No cure ${kind}`)
  return cure
}

describe("a last foil under-processed, 25 foils in one rinse", () => {
  const service = timedService(foilsAlike(25), { rinse: "together" })
  it("is cured by each off when ready first, then an assistant, leaving some for another day, fewer", () =>
    // Two pairs: the last on at 12 x 1.5 = 18, 27 minutes left. Thirteen fit today and twelve another day.
    expect(kindsOf(service, "under-processed")).toEqual([
      "each-off",
      "second-colourist",
      "another-day",
      "fewer-foils",
    ]))
  it("keeps as many foils as fit", () => {
    const fewer = cureOf(service, "under-processed", "fewer-foils")
    expect(fewer.after.foils).toHaveLength(13)
    expect(fewer.left).toHaveLength(12)
    // All along the order, one in two: never the last twelve.
    expect(fewer.left.slice(0, 3)).toEqual(["f2", "f4", "f6"])
  })
  it("costs that someone must be free, and until the last is on", () =>
    expect(cureOf(service, "under-processed", "second-colourist").costMin).toBe(20 + 18))
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
    expect(weaker).toMatchObject({ code: "weaker-early", count: 1 })
  })
  it("mixes afresh in time for a bowl that would go stale, in the largest bowls that do", () => {
    // 5 minutes a foil, good for 12: two foils a bowl.
    const service = timedService(foilsAlike(6, { placeMin: always(5) }), {
      mixes: [timedMix("A", { potLifeMin: 12 })],
    })
    const fresh = cureOf(service, "pot-life", "fresh-bowl")
    expect(fresh).toMatchObject({ code: "fresh-bowl", mixes: ["A"], foils: [3, 5] })
    expect(planService(fresh.after).bowls.map(({ foils }) => foils.length)).toEqual([2, 2, 2])
  })
  it("asks for a later end, an assistant or fewer foils where the booking is too short", () => {
    const service = timedService(foilsAlike(20), { bookingMin: 45 }) // 28.5 + 26 = 54.5; with two 13.5 + 26
    expect(kindsOf(service, "booking")).toEqual([
      "later-end",
      "second-colourist",
      "another-day",
      "fewer-foils",
    ])
    expect(cureOf(service, "booking", "later-end")).toMatchObject({ bookingMin: 60, byMin: 15 })
  })
  it("moves no foil that is already on", () => {
    const soFar = { nowMin: 12, onAtMin: { f1: 0, f2: 2, f3: 9 }, offAtMin: {}, mixedAtMin: [] }
    const service = timedService(foilsAlike(25), { rinse: "together", soFar })
    for (const { after } of findFixes(service, "under-processed"))
      expect(after.foils.slice(0, 3).map(({ id }) => id)).toEqual(["f1", "f2", "f3"])
  })
})

describe("a booking that is too short", () => {
  const side = (at: number) => (at % 2 === 0 ? ("left" as const) : ("right" as const))
  const foils = foilsAlike(12).map((foil, at) => ({ ...foil, side: side(at) }))
  const finish = {
    detanglingMin: always(0),
    rinsingMin: always(8),
    toners: [],
    dryingMin: { low: 20, mid: 30, high: 45 },
  }
  // 16.5 + 26 + 8 + 30 = 80.5
  it("gives up the drying first, which leaves every foil where it is", () => {
    const service = timedService(foils, { finish, bookingMin: 60 })
    const [first] = findFixes(service, "booking")
    expect(first).toMatchObject({ code: "no-drying", savesMin: 30, left: [] })
    expect(planService(first.after).chairMin.mid).toBeCloseTo(50.5, 9)
  })
  it("leaves out as many of the left as of the right, and not one side’s end", () => {
    const service = timedService(foils, { finish: { ...finish, dryingMin: always(0) }, bookingMin: 45 })
    const fewer = cureOf(service, "booking", "fewer-foils")
    const left = foils.filter(({ id }) => fewer.left.includes(id))
    expect(left.filter((foil) => foil.side === "left")).toHaveLength(left.length / 2)
    expect(fewer.left).not.toContain("f12")
    expect(fewer.left).not.toContain("f1")
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
