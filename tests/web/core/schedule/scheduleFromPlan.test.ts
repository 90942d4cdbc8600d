import { describe, expect, it } from "vitest"
import { isFoil } from "../../../../geometry/section/section"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { foilMin, type Skill } from "../../../../presets/timing/pace"
import { type HairState, newConsultation, type Zone } from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import type { TimingChoices } from "../../../../web/core/document/timingChoices"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import type { LiftGoal } from "../../../../web/core/lift/scheduleReady"
import { choicesOfPlan } from "../../../../web/core/schedule/choicesOfPlan"
import { serviceOf } from "../../../../web/core/schedule/scheduleFromPlan"
import { serviceProblems } from "../../../../web/core/schedule/scheduleProblems"
import { planService } from "../../../../web/core/schedule/timing"
import { busyPlan } from "../../../support/busyPlan"

const busy = busyPlan(160)
const withFoils = (count: number, change: Partial<Plan> = {}): Plan => ({
  ...busy,
  sections: busy.sections.filter(({ kind }) => kind !== "backcomb").slice(0, count),
  ...change,
})
const atLevel = (level: number): HairState => ({ level, history: null, porosity: null, stretch: null })
const serviceWith = (plan: Plan, skill: Skill = "usual", hands: 1 | 2 = 1, goal: LiftGoal | null = null) =>
  serviceOf(plan, houseProducts, { ...choicesOfPlan(plan), goal, paceMin: foilMin[skill], hands })

describe("a plan as the clock sees it", () => {
  const service = serviceWith(busy)
  it("can be timed", () => expect(serviceProblems(service)).toEqual([]))
  it("takes each mix's figures from its sheet", () => {
    // 20 volume is 6 %, mixed 1 : 2 it is 4 % on the head; the house powder prints 45 minutes, heat for 10.
    expect(service.mixes[0]).toMatchObject({
      developerVolume: 20,
      onHeadPercent: 4,
      potLifeMin: 45,
      heatMostMin: 10,
    })
    expect(new Set(service.foils.map(({ limitMin }) => limitMin))).toEqual(new Set([45]))
  })
  it("takes 35 minutes, and no heat, where there is no sheet", () => {
    const mixes = busy.mixes.map((mix) => ({ ...mix, product: "Something else" }))
    const unknown = serviceWith({ ...busy, mixes })
    expect(unknown.foils[0].limitMin).toBe(35)
    expect(unknown.mixes[0].heatMostMin).toBe(0)
  })
  it("gives a backcomb half a minute to a minute more, and hairline foils their zone", () => {
    const backcomb = service.foils.find(({ kind }) => kind === "backcomb")
    expect(backcomb?.placeMin).toEqual({ low: 2, mid: 2.75, high: 3.5 })
    expect(service.foils[0].zone).toBe("hairline") // parted 6 mm behind it
    expect(service.foils[20].zone).not.toBe("hairline") // 18 mm
  })
  it("knows with a goal when a foil may be ready in each mix, and without one only that most are by then", () => {
    const [strong] = busy.mixes
    const mixes = [
      strong,
      { ...strong, id: "B", developerVolume: 10 },
      { ...strong, id: "C", developerVolume: 25 },
    ]
    // The foil at 18 mm: hair at the hairline has fewer minutes, see liftsFirst.
    const { A, B, C } = serviceWith({ ...busy, mixes }, "usual", 1, { fromLevel: 6, toLevel: 7.5 }).foils[20]
      .readyMin
    expect(A.mid).toBeLessThan(45) // 1.5 of the 3 to 4 levels printed for 20 volume
    expect(B.mid).toBeGreaterThan(A.mid) // 1.5 of the 1 to 2 printed for 10 volume
    expect(C).toEqual({ low: 18, mid: 26, high: 34 }) // no lift is printed for 25 volume
    expect(serviceWith({ ...busy, mixes }).foils[20].readyMin).toEqual({ A: { low: 18, mid: 26, high: 34 } })
  })
  it("starts each zone from its own level, where that was written down", () => {
    const hairline = { roots: atLevel(7.5) }
    const top = { roots: atLevel(6.5) }
    const consultation = { ...newConsultation(), hair: { hairline, top }, liftToLevel: 8 }
    const plan: Plan = { ...busy, consultation }
    const { foils } = serviceOf(plan, houseProducts, choicesOfPlan(plan))
    const readyIn = (zone: Zone) => foils.find((foil) => foil.zone === zone)?.readyMin.A.mid ?? 0
    expect(readyIn("hairline")).toBeLessThan(readyIn("top"))
    expect(readyIn("left")).toBe(readyIn("top")) // not written down: the darkest hair rules
    const told: Plan = { ...plan, timing: { ...usualTiming, lift: { fromLevel: 6, toLevel: 8 } } }
    const ready = serviceOf(told, houseProducts, choicesOfPlan(told))
      .foils.filter(({ atHairline }) => !atHairline)
      .map(({ readyMin }) => readyMin.A.mid)
    expect(new Set(ready).size).toBe(1)
  })
  it("looks sooner at fine hair, and at the hairline", () => {
    const fine = serviceWith({ ...busy, hair: { ...busy.hair, fibreUm: 55 } })
    expect([service.foils[20].delicate, fine.foils[20].delicate]).toEqual([false, true])
    expect(service.foils[0].delicate).toBe(true)
  })
  it("has every foil in one bowl, of its own mix", () => {
    const served = service.bowls?.flatMap(({ foils }) => foils) ?? []
    expect([...served].sort()).toEqual(
      busy.sections
        .filter(isFoil)
        .map(({ id }) => id)
        .sort(),
    )
  })
})

describe("two pairs of hands", () => {
  const timing = { ...usualTiming, hands: 2 as const }
  const handsOf = (change: Partial<TimingChoices>) => {
    const plan = { ...withFoils(4), timing: { ...timing, ...change } }
    return serviceOf(plan, houseProducts, choicesOfPlan(plan)).hands
  }
  it("rest together, or each alone", () => {
    const breaks = [
      { fromMin: 10, toMin: 20 },
      { fromMin: 30, toMin: 45, of: 2 as const },
    ]
    expect(handsOf({ breaks }).map(({ breaks }) => breaks.map(({ fromMin }) => fromMin))).toEqual([
      [10],
      [10, 30],
    ])
  })
  it("each work at their own pace", () => {
    // Usual is 2 minutes a slice or weave, the second takes 3: one and a half times as long.
    const slow = { low: 3, mid: 3, high: 3 }
    const secondPace = { slice: slow, weave: slow, backcomb: slow }
    expect(handsOf({ secondPace }).map(({ paceShare }) => paceShare)).toEqual([1, 1.5])
    expect(handsOf({}).map(({ paceShare }) => paceShare)).toEqual([1, 1])
  })
})

describe("the whole visit, with drying (common practice)", () => {
  const cases: [string, number, Skill, 1 | 2, number, number][] = [
    ["a frame of 6 to 12 foils, 1.5 to 2 hours", 6, "usual", 1, 1.5, 2],
    ["a frame of 6 to 12 foils, 1.5 to 2 hours", 12, "usual", 1, 1.5, 2],
    ["a half head of 25 foils, 2 to 2.5 hours", 25, "usual", 1, 2, 2.5],
    ["a full head of 60 foils by an expert, 2.5 to 3.5 hours", 60, "expert", 1, 2.5, 3.5],
    ["a full head of 80 foils with two pairs of hands, 2.5 to 3.5 hours", 80, "usual", 2, 2.5, 3.5],
  ]
  for (const [name, count, skill, hands, least, most] of cases)
    it(`${name}: ${count} foils`, () => {
      const { chairMin } = planService(serviceWith(withFoils(count), skill, hands))
      expect(chairMin.mid / 60).toBeGreaterThanOrEqual(least)
      expect(chairMin.mid / 60).toBeLessThanOrEqual(most)
    })
})
