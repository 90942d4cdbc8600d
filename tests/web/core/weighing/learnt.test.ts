import { describe, expect, it } from "vitest"
import { productG } from "../../../../geometry/hair/product"
import { tradeFigures } from "../../../../presets/formula/tradeFigures"
import { type StartFigures, sheetOf } from "../../../../web/core/document/salon"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { setSalon } from "../../../../web/core/edits/plan/setSalon"
import { openPlan, savePlan } from "../../../../web/core/file/planFile"
import { gramsFor, learn, priorBelief, usualNeedOf } from "../../../../web/core/grams/calibration"
import { figuresToPlanBy } from "../../../../web/core/grams/figuresToPlanBy"
import { startBelief } from "../../../../web/core/grams/startBelief"
import { joinSalons } from "../../../../web/core/joining/joinSalons"
import { readyWith } from "../../../../web/core/lift/liftOfPlan"
import { choicesOfPlan } from "../../../../web/core/schedule/choicesOfPlan"
import { followScale } from "../../../../web/core/weighing/followScale"
import { learntOf, type NamedWeighing } from "../../../../web/core/weighing/learnt"
import { salonForPlans } from "../../../../web/core/weighing/salonOfPlan"
import { emptySalonShelf, readSalonShelf } from "../../../../web/core/weighing/salonRecord"
import { salonDice } from "../../../support/drawnSalon"
import { bowlRows } from "../../../support/knownSalons"
import { done } from "../../../support/samples"

const prior = priorBelief(tradeFigures)

/** Bowls of a salon that uses 1.2 times what the starting figures expect, unlike in foils, hair and strand. */
const bowls = (count: number, product = "Powder", kind: NamedWeighing["kind"] = "slice"): NamedWeighing[] =>
  Array.from({ length: count }, (_, i) => {
    const need = {
      panels: 4 + (i % 5),
      hairG: 4 + ((3 * i) % 7),
      strandAreaCm2: 1500 + 400 * ((2 * i) % 5),
    }
    return { ...need, product, kind, productG: 1.2 * productG(need, tradeFigures).mid }
  })

describe("what the scale teaches", () => {
  it("is nothing before there are enough weighings", () => {
    expect(learntOf([])).toEqual([])
    expect(learntOf(bowls(1))).toEqual([])
  })

  it("plans a usual bowl with the range that its next weighing has", () => {
    const rows = bowls(9)
    const figures = { ...tradeFigures, ...figuresToPlanBy(prior, rows) }
    const usual = usualNeedOf(rows)
    const planned = productG(usual, figures)
    const next = gramsFor(learn(prior, rows), usual, prior)
    expect(planned.mid).toBeCloseTo(next.mid, 6)
    expect(planned.high).toBeCloseTo(next.high, 6)
    const before = productG(usual, tradeFigures)
    expect(planned.high - planned.low).toBeLessThan((before.high - before.low) / 2)
    expect(planned.mid).toBeCloseTo(1.2 * before.mid, 0)
  })

  it("is told of each product and kind where there is enough of it", () => {
    const rows = [
      ...bowls(12, "Powder", "slice"),
      ...bowls(12, "Clay", "backcomb"),
      ...bowls(1, "Rare", "weave"),
    ]
    const told = learntOf(rows).map(({ product, kind, weighings }) => [product, kind, weighings])
    expect(told).toContainEqual([null, null, 25])
    expect(told).toContainEqual(["Clay", null, 12])
    expect(told).toContainEqual([null, "slice", 12])
    expect(told).toContainEqual(["Powder", "slice", 12])
    expect(told.some(([product]) => product === "Rare")).toBe(false)
  })
})

describe("a salon that starts from what others learnt", () => {
  const dice = salonDice(19)
  const { start } = joinSalons(Array.from({ length: 5 }, () => bowlRows(dice, 6)))
  const usual = { panels: 9, hairG: 9, strandAreaCm2: 3000 }

  it("plans its first bowl by it, and each weighing narrows it", () => {
    const [before] = learntOf([], start)
    const [after] = learntOf(bowls(2), start)
    expect(before).toMatchObject({ product: null, kind: null, weighings: 0 })
    const widthOf = (learnt: typeof before) => {
      const { low, high } = productG(usual, { ...tradeFigures, ...learnt })
      return high - low
    }
    const trade = productG(usual, tradeFigures)
    expect(widthOf(before)).toBeLessThan(0.8 * (trade.high - trade.low))
    expect(after.weighings).toBe(2)
    expect(widthOf(after)).not.toBe(widthOf(before))
    const narrowed = startBelief(start)
    const once = learn(narrowed, bowls(2))
    expect(once.precision[1][1]).toBeGreaterThan(narrowed.precision[1][1])
  })

  it("passes all of it on to its plans, and keeps it on the shelf", () => {
    const shelf = { ...emptySalonShelf(), start }
    expect(readSalonShelf(JSON.parse(JSON.stringify(shelf)))).toEqual({ salon: shelf, unread: [] })
    const salon = salonForPlans(shelf)
    expect(salon.start).toEqual(start)
    expect(salon.learnt).toHaveLength(1)
    const plan = done(setSalon(salon))
    expect(openPlan(savePlan(plan))).toMatchObject({ ok: true, plan: { salon: { start: { salons: 5 } } } })
    expect(followScale(plan, shelf)).toBeNull()
    const followed = followScale(done(setSalon({})), shelf)
    expect(followed && done(followed).salon?.start).toMatchObject({ salons: 5 })
  })

  it("goes by its half time and its pace where the plan says none of its own", () => {
    const told: StartFigures = {
      ...start,
      halfTimeMin: { low: 6, high: 8 },
      paceMin: { slice: always(1.2), weave: always(1.4), backcomb: always(2) },
    }
    const plan = done(setSalon({ start: told }))
    expect(choicesOfPlan(plan).learntMin).toEqual(told.paceMin)
    const expert = { ...plan, timing: { ...usualTiming, skill: "expert" as const } }
    expect(choicesOfPlan(expert).learntMin).toBeNull()
    const asked = { goal: { fromLevel: 6, toLevel: 8 }, strandTest: null }
    const [mix] = plan.mixes
    const sheet = sheetOf(mix.product, plan) ?? undefined
    expect(readyWith(mix, sheet, { ...asked, start: told }).mid).toBeLessThan(
      readyWith(mix, sheet, asked).mid,
    )
  })
})

const always = (minutes: number) => ({ low: minutes, mid: minutes, high: minutes })
