import { describe, expect, it } from "vitest"
import { type Foil, isFoil } from "../../../../geometry/section/section"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { liftRequest } from "../../../../web/core/bowls/liftRequest"
import { plannedService } from "../../../../web/core/chair/plannedService"
import {
  type Consultation,
  type HairState,
  newConsultation,
} from "../../../../web/core/document/consultation"
import type { Plan } from "../../../../web/core/document/schema"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { readyWith } from "../../../../web/core/lift/liftOfPlan"
import { liftsFirst, readyFirst } from "../../../../web/core/lift/liftsFirst"
import { choicesOfPlan } from "../../../../web/core/schedule/choicesOfPlan"
import { serviceOf, zoneOf } from "../../../../web/core/schedule/scheduleFromPlan"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { busyPlan } from "../../../support/busyPlan"

const busy = busyPlan(40)
const level = (is: number | null): HairState => ({ level: is, history: [], porosity: null, stretch: null })
const all = (roots: number, ends: number) => ({
  roots: level(roots),
  midLengths: level(ends),
  ends: level(ends),
})
const planOf = (hair: Consultation["hair"], liftToLevel: number, change: Partial<Foil> = {}): Plan => ({
  ...busy,
  sections: busy.sections.map((section) => ({ ...section, ...change }) as typeof section),
  consultation: { ...newConsultation(), hair, liftToLevel },
})
const foilsOf = (plan: Plan) => plan.sections.filter(isFoil)
const sheetOf = (product: string) => houseProducts.find(({ name }) => name === product)

/** Minutes on that follow from the level Formula counts a foil from. */
function readyByFormula(foil: Foil, plan: Plan) {
  const { fromLevel, liftToLevel } = liftRequest([foil], plan)
  const goal = fromLevel === null || liftToLevel === null ? null : { fromLevel, toLevel: liftToLevel }
  const mix = plan.mixes.find(({ id }) => id === foil.mix) ?? plan.mixes[0]
  const ready = readyWith(mix, sheetOf(mix.product), { goal, strandTest: null })
  return liftsFirst(foil, plan, false) === null ? ready : readyFirst(ready)
}

const readyByClock = (plan: Plan) =>
  new Map(
    serviceOf(plan, houseProducts, choicesOfPlan(plan)).foils.map(({ id, mix, readyMin }) => [
      id,
      readyMin[mix],
    ]),
  )

describe("Formula and Timing count each foil's lift from the same level", () => {
  const cases: [string, Plan][] = [
    ["one level all over", planOf({ top: all(6, 6) }, 7)],
    ["a hairline with a level of its own", planOf({ hairline: all(7.5, 7.5), top: all(6.5, 6.5) }, 8)],
    [
      "lighter ends, where the roots are not coated",
      planOf({ hairline: all(6, 7.5), top: all(5, 7) }, 8, { strand: { from: 0.5, to: 1 } }),
    ],
    [
      "a zone that was looked at without a level",
      planOf(
        { hairline: { roots: level(null), midLengths: level(null), ends: level(null) }, top: all(6, 6) },
        8,
      ),
    ],
  ]
  it.each(cases)("%s", (_, plan) => {
    const byClock = readyByClock(plan)
    for (const foil of foilsOf(plan)) expect(byClock.get(foil.id)).toEqual(readyByFormula(foil, plan))
  })

  it("levels told to the clock, in place of both", () => {
    const told = { fromLevel: 6, toLevel: 8 }
    const plan = {
      ...planOf({ hairline: all(7, 7), top: all(5, 5) }, 9),
      timing: { ...usualTiming, lift: told },
    }
    for (const foil of foilsOf(plan))
      expect(liftRequest([foil], plan)).toMatchObject({ fromLevel: 6, liftToLevel: 8 })
    const byClock = readyByClock(plan)
    for (const foil of foilsOf(plan)) expect(byClock.get(foil.id)).toEqual(readyByFormula(foil, plan))
  })
})

describe("hair that is at its target already", () => {
  // Formula proposes nothing for it; it is not left on as long as the darkest hair takes.
  const plan = planOf({ hairline: all(8, 8), top: all(6, 6) }, 8)
  it("comes off at its first check, and the rest by its own lift", () => {
    const byClock = readyByClock(plan)
    for (const foil of foilsOf(plan)) {
      const ready = byClock.get(foil.id)
      if (zoneOf(foil, plan) === "hairline") expect(ready).toMatchObject({ low: 0 })
      else expect(ready).toEqual(readyByFormula(foil, plan))
    }
    const timed = timedPlan(plan)
    if (!timed.ok) throw new Error("not timed")
    for (const { onMin, id } of timed.schedule.foils) {
      const foil = timed.service.foils.find((each) => each.id === id)
      if (foil?.zone === "hairline") expect(foil.readyMin[foil.mix].mid).toBeLessThanOrEqual(10)
      expect(onMin).toBeGreaterThan(0)
    }
  })
})

it("calls a foil off at the target also where nobody wrote down the level it starts from", () => {
  const plan = { ...busy, consultation: { ...newConsultation(), liftToLevel: 8 } }
  const timed = timedPlan(plan)
  if (!timed.ok) throw new Error("not timed")
  expect(new Set(plannedService(plan, timed).foils.map(({ goalLevel }) => goalLevel))).toEqual(new Set([8]))
})
