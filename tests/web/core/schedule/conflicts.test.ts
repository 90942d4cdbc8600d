import { describe, expect, it } from "vitest"
import { findConflicts } from "../../../../web/core/schedule/conflicts"
import type { Service } from "../../../../web/core/schedule/scheduleInput"
import { planService } from "../../../../web/core/schedule/timing"
import { always, foilsAlike, timedFoil, timedMix, timedService } from "../../../support/timedService"

const conflictsOf = (service: Service) => findConflicts(service, planService(service))
const rulesOf = (service: Service) => conflictsOf(service).map(({ code }) => code)

describe("foils at 1.5 minutes each, with a limit of 45", () => {
  const together = (count: number) => timedService(foilsAlike(count), { rinse: "together" })
  it("over-run with one rinse when there are 40: the last goes on at 58.5", () => {
    const [overRun] = conflictsOf(together(40))
    expect(overRun.code).toBe("over-run")
    // The last is placed at 60: the first is 15 over. On before 15: foils at 0, 1.5 ... 13.5, ten of them.
    expect(overRun.byMin).toBe(15)
    expect(overRun.foils).toHaveLength(10)
    expect(overRun).toMatchObject({ foil: 1, limitMin: 45, overMin: 15, others: 9 })
  })
  it("come off under-processed with one rinse when there are 25: the last has 9 minutes", () => {
    const conflicts = conflictsOf(together(25))
    expect(conflicts.map(({ code }) => code)).toEqual(["under-processed"])
    expect(conflicts[0]).toMatchObject({ foil: 25, onMin: 9, needsMin: 26 })
    expect(conflicts[0].foils[0]).toBe("f25")
  })
  it("fit one rinse from 8 to 13 (common practice), and no more", () => {
    for (let count = 8; count <= 13; count++) expect(rulesOf(together(count))).toEqual([])
    expect(rulesOf(together(14))).toEqual(["under-processed"])
  })
  it("are in none of the three conflicts when each comes off as it is ready", () => {
    for (const count of [8, 13, 25, 40])
      for (const wiping of [0, 0.5])
        expect(rulesOf(timedService(foilsAlike(count), { wipingMin: always(wiping) }))).toEqual([])
  })
})

describe("other conflicts", () => {
  it("a goal that is not reached within the limit is under-processed, however it is taken off", () => {
    const never = Number.POSITIVE_INFINITY
    const slow = timedFoil("a", { readyMin: { A: { low: 40, mid: never, high: never } } })
    const [conflict] = conflictsOf(timedService([slow]))
    expect(conflict).toMatchObject({ code: "under-processed", foil: 1, onMin: 45, needsMin: null })
  })
  it("a bowl used past its pot life", () => {
    // Mixed at 2, the third foil is placed at 2 + 15 = 17: 15 minutes old, and good for 12.
    const service = timedService(foilsAlike(3, { placeMin: always(5) }), {
      mixes: [timedMix("A", { mixingMin: always(2), potLifeMin: 12 })],
    })
    expect(conflictsOf(service)).toEqual([
      {
        code: "pot-life",
        mix: "A",
        agedMin: 15,
        potLifeMin: 12,
        foils: ["f1", "f2", "f3"],
        byMin: 3,
      },
    ])
  })
  it("a service longer than the booking", () => {
    const [conflict] = conflictsOf(timedService(foilsAlike(3), { bookingMin: 20 }))
    expect(conflict).toMatchObject({ code: "booking", bookingMin: 20, byMin: 9 }) // 3 + 26 = 29 minutes
    expect(rulesOf(timedService(foilsAlike(3), { bookingMin: 29 }))).toEqual([])
  })
  it("a hairline ready well before the back, with one rinse only", () => {
    const foils = [
      timedFoil("front", { zone: "hairline", readyMin: { A: always(20) } }),
      timedFoil("nape", { zone: "back" }),
    ]
    const service = timedService(foils, { rinse: "together" })
    // The back is ready at 1.5 + 26 = 27.5, the hairline at 20.
    expect(conflictsOf(service)).toMatchObject([
      { code: "hairline-ahead", waitMin: 7.5, foils: ["front"], byMin: 7.5 },
    ])
    expect(rulesOf({ ...service, rinse: "each" })).toEqual([])
    expect(rulesOf({ ...service, foils: [...foils].reverse() })).toEqual([]) // 21.5 against 26
  })
  it("a hairline ready well before the back, by where its hair lies and not by the zone of its parting", () => {
    const early = { readyMin: { A: always(20) } }
    const foils = [
      timedFoil("behind", { zone: "top", atHairline: true, ...early }),
      timedFoil("inside", { zone: "top", ...early }),
      timedFoil("nape", { zone: "back" }),
    ]
    // The back is ready at 3 + 26 = 29, the hairline at 20.
    expect(conflictsOf(timedService(foils, { rinse: "together" }))).toMatchObject([
      { code: "hairline-ahead", waitMin: 9, foils: ["behind"] },
    ])
  })
  it("does not judge what has already come off", () => {
    const soFar = { nowMin: 30, onAtMin: { f1: 0, f2: 1 }, offAtMin: { f1: 5 }, mixedAtMin: [] }
    expect(rulesOf(timedService(foilsAlike(2), { soFar }))).toEqual([])
  })
})
