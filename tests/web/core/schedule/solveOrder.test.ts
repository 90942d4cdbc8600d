import fc from "fast-check"
import { describe, expect, it } from "vitest"
import type { Service } from "../../../../web/core/schedule/scheduleInput"
import { readySpreadMin, solveOrder } from "../../../../web/core/schedule/solveOrder"
import { planService } from "../../../../web/core/schedule/timing"
import { anyService, closestOfAll, isNoLonger, mixes, strength } from "../../../support/orderServices"
import { processorMs } from "../../../support/processorMs"
import { always, timedFoil, timedService } from "../../../support/timedService"

const both = { reorder: true, weaken: true }
const weakIs26 = { A: always(20), B: always(26) }

/** Weakened foils come first, by whole working sections. */
function isEarlyOnly({ foils }: Service, changes: readonly number[]): boolean {
  const last = changes.findLastIndex((change) => change < 0)
  return foils.every(({ group }, at) => at >= last || changes[at] < 0 || foils[at + 1].group === group)
}

describe("the closest arrangement", () => {
  it("puts the slower first: 30 at 0 and 27 at 3 are ready together", () => {
    const foils = [27, 30].map((ready) =>
      timedFoil(`r${ready}`, { group: `${ready}`, placeMin: always(3), readyMin: { A: always(ready) } }),
    )
    const service = timedService(foils)
    expect(readySpreadMin(service)).toBe(6) // 27 against 33
    expect(solveOrder(service, both).foils.map(({ id }) => id)).toEqual(["r30", "r27"])
    expect(readySpreadMin(solveOrder(service, both))).toBe(0)
  })
  it("weakens the early mix where the order is kept, when both bowls were mixed beforehand", () => {
    const foils = ["a", "b"].map((id) =>
      timedFoil(id, { group: id, placeMin: always(6), readyMin: weakIs26 }),
    )
    const mixed = mixes.map((mix) => ({ ...mix, mixingMin: always(0) }))
    const solved = solveOrder(timedService(foils, { mixes: mixed }), { reorder: false, weaken: true })
    // 20 and 6 + 20 are six minutes apart; the early one weaker, 26 and 6 + 20 together, and nobody sits longer.
    expect(solved.foils.map(({ mix }) => mix)).toEqual(["B", "A"])
    expect(readySpreadMin(solved)).toBe(0)
    expect(planService(solved).chairMin.mid).toBe(26)
  })
  it("leaves the early mix where mixing another bowl keeps the client a minute longer", () => {
    const foils = ["a", "b"].map((id) =>
      timedFoil(id, { group: id, placeMin: always(6), readyMin: weakIs26 }),
    )
    const service = timedService(foils, { mixes })
    // In one bowl 1 + 20 and 1 + 6 + 20 = 27; the early one weaker, 1 + 26, and a bowl of A for the late one,
    // 1 + 6 + 1 + 20 = 28: closer together, but later.
    expect(planService(service).chairMin.mid).toBe(27)
    expect(solveOrder(service, { reorder: false, weaken: true })).toBe(service)
  })
  it("gives the service itself back where nothing is better", () => {
    const service = timedService([timedFoil("only")])
    expect(solveOrder(service, both)).toBe(service)
  })
  it("keeps working sections together, and foils that are on where they are", () => {
    const foils = "aabbcc"
      .split("")
      .map((group, at) => timedFoil(`f${at}`, { group, readyMin: { A: always(20 + 3 * at) } }))
    const soFar = { nowMin: 5, onAtMin: { f0: 0, f1: 2 }, offAtMin: {}, mixedAtMin: [] }
    expect(
      solveOrder(timedService(foils), both)
        .foils.map(({ group }) => group)
        .join(""),
    ).toBe("ccbbaa")
    expect(
      solveOrder(timedService(foils, { soFar }), both)
        .foils.map(({ group }) => group)
        .join(""),
    ).toBe("aaccbb")
  })
  it("brings a hairline that is stronger than the rest down to it", () => {
    const readyMin = { A: always(20), B: always(20) }
    const foils = [
      timedFoil("edge", { zone: "hairline", mix: "A", readyMin }),
      timedFoil("top", { group: "two", mix: "B", readyMin }),
    ]
    expect(solveOrder(timedService(foils, { mixes }), both).foils.every(({ mix }) => mix === "B")).toBe(true)
  })
})

describe("any service", { timeout: 120_000 }, () => {
  it("is never worse than it was given, and breaks none of the rules", () =>
    fc.assert(
      fc.property(anyService(14, 9), (service) => {
        const solved = solveOrder(service, both)
        const given = new Map(service.foils.map((foil) => [foil.id, foil]))
        const changes = solved.foils.map(({ id, mix }) => strength[mix] - strength[given.get(id)?.mix ?? ""])
        expect(readySpreadMin(solved)).toBeLessThanOrEqual(readySpreadMin(service) + 1e-9)
        expect(isNoLonger(service)(solved)).toBe(true)
        expect(solved.foils.map(({ id }) => id).sort()).toEqual(service.foils.map(({ id }) => id).sort())
        expect(Math.max(...changes)).toBeLessThanOrEqual(0) // none is stronger, so neither is the hairline
        expect(isEarlyOnly(solved, changes)).toBe(true)
        for (const { readyMin, mix, limitMin } of solved.foils)
          expect(readyMin[mix].mid).toBeLessThanOrEqual(limitMin)
      }),
      { numRuns: 60 },
    ))
  it("of few working sections keeps the client no longer either, alone, with two, and with one rinse for all", () =>
    fc.assert(
      fc.property(anyService(9, 4), fc.constantFrom("each" as const, "together" as const), (any, rinse) => {
        const service = { ...any, rinse, wipingMin: always(0.5) }
        expect(isNoLonger(service)(solveOrder(service, both))).toBe(true)
      }),
      { numRuns: 60 },
    ))
  it("of up to 7 foils comes as close together as trying everything that keeps the client no longer", () =>
    fc.assert(
      fc.property(anyService(5, 99), (service) => {
        expect(readySpreadMin(solveOrder(service, both))).toBeCloseTo(closestOfAll(service), 9)
      }),
      { numRuns: 25 },
    ))
  it(
    "of 6 and 7 foils, drawn at random, too",
    () =>
      fc.assert(
        fc.property(anyService(7, 99, 6), (service) => {
          expect(readySpreadMin(solveOrder(service, both))).toBeCloseTo(closestOfAll(service), 9)
        }),
        { numRuns: 3 },
      ),
    300_000,
  )
  it("of 6 and 7 foils of our choosing too", () => {
    for (const count of [6, 7]) {
      const foils = Array.from({ length: count }, (_, at) =>
        timedFoil(`f${at}`, {
          group: `g${at}`,
          placeMin: always(1 + ((at * 5) % 7) / 2),
          readyMin: { A: always(18 + ((at * 11) % 13)), B: always(24 + ((at * 7) % 13)) },
        }),
      )
      const service = timedService(foils, { mixes })
      expect(readySpreadMin(solveOrder(service, both))).toBeCloseTo(closestOfAll(service), 9)
    }
  })
})

describe("how fast", () => {
  it("solves 120 foils within 200 ms of the processor", async () => {
    const foils = Array.from({ length: 120 }, (_, at) =>
      timedFoil(`f${at}`, {
        group: `g${at >> 2}`,
        placeMin: always(1 + ((at * 5) % 7) / 4),
        readyMin: { A: always(15 + ((at * 11) % 17)), B: always(22 + ((at * 7) % 17)) },
      }),
    )
    const service = timedService(foils, { mixes, partingMin: always(1) })
    const times: number[] = []
    for (let i = 0; i < 3; i++) times.push(await processorMs(() => solveOrder(service, both)))
    expect(Math.min(...times)).toBeLessThan(200)
  })
})
