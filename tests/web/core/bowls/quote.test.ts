import { expect, test } from "vitest"
import { quoteOf } from "../../../../web/core/bowls/quote"
import { setSalon } from "../../../../web/core/edits/plan/setSalon"
import { measured } from "../../../../web/core/figures/measured"
import { examplePlan } from "../../../../web/core/file/examplePlan"
import { timedPlan } from "../../../../web/core/schedule/timedPlan"
import { busyPlan } from "../../../support/busyPlan"
import { done, emptyPlan } from "../../../support/samples"

const prices = { placement: 40, foil: 2.5, extraBowl: 6, toner: 15, chairHour: 30 }

test("placement, foils, toner and the chair by the salon's list, the chair as a range", () => {
  const plan = done(setSalon({ prices }), busyPlan(20))
  const quote = quoteOf(plan)
  const timed = timedPlan(plan)
  if (!quote || !timed.ok) throw new Error("the plan can be timed")
  const { low, high } = timed.schedule.chairMin
  const amountOf = (name: string) => quote.lines.find(({ price }) => price === name)?.amount
  expect(amountOf("foil")).toEqual({ low: 50, mid: 50, high: 50 }) // 20 x 2.50
  expect(amountOf("toner")).toEqual({ low: 15, mid: 15, high: 15 }) // mids and hairline are one shade
  expect(amountOf("chairHour")?.low).toBeCloseTo(low / 2, 9) // 30 an hour is half a coin a minute
  const fixed = 40 + 50 + 15 + (amountOf("extraBowl")?.mid ?? 0)
  expect(quote.total.low).toBeCloseTo(fixed + low / 2, 9)
  expect(quote.total.high).toBeCloseTo(fixed + high / 2, 9)
})

test("every sheet of foil is counted, as the map counts them", () => {
  const long = {
    ...examplePlan(),
    hair: { ...examplePlan().hair, lengthCm: { front: 45, sides: 55, back: 60 } },
  }
  const { foils } = measured(long).totals
  const line = quoteOf(done(setSalon({ prices }), long))?.lines.find(({ price }) => price === "foil")
  expect(foils).toBeGreaterThan(9) // nine sections, their hair longer than a foil
  expect(line?.count).toEqual({ low: foils, mid: foils, high: foils })
  expect(line?.amount?.mid).toBeCloseTo(2.5 * foils, 9)
})

test("what has no price adds nothing and says so", () => {
  const quote = quoteOf(examplePlan())
  expect(quote?.total).toEqual({ low: 0, mid: 0, high: 0 })
  expect(quote?.lines.every(({ amount }) => amount === null)).toBe(true)
})

test("a plan without foils has no quote", () => {
  expect(quoteOf(emptyPlan)?.lines.some(({ price }) => price === "foil") ?? false).toBe(false)
})
