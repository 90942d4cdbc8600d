import { expect, test } from "vitest"
import { mixesOfPlan } from "../../../../web/core/bowls/mixesOfPlan"
import { quoteOf } from "../../../../web/core/bowls/quote"
import { newSalon } from "../../../../web/core/document/salon"
import type { Plan } from "../../../../web/core/document/schema"
import { usualTiming } from "../../../../web/core/document/usualTiming"
import { samplePlan } from "../../../support/samples"

const prices = { placement: 40, foil: 2, extraBowl: 6, toner: 15, chairHour: 30 }
const [mixA] = samplePlan.mixes
const priced: Plan = { ...samplePlan, salon: { ...newSalon(), prices } }
const twoBowls: Plan = {
  ...priced,
  mixes: [mixA, { ...mixA, id: "B" }],
  sections: priced.sections.map((section, at) =>
    "mix" in section && at === 0 ? { ...section, mix: "B" } : section,
  ),
}
const amounts = (plan: Plan) =>
  Object.fromEntries((quoteOf(plan)?.lines ?? []).map(({ price, amount }) => [price, amount?.mid]))

test("a placement is asked for once, the first bowl is in it, and what there is none of has no line", () => {
  const { chairHour, ...fixed } = amounts(priced)
  expect(fixed).toEqual({ placement: 40, foil: 2 * 3, toner: 15 })
  expect(chairHour).toBeGreaterThan(0)
})

test("each bowl after the first is asked for", () => {
  expect(mixesOfPlan(twoBowls).flatMap(({ made }) => made?.bowls ?? [])).toHaveLength(2)
  expect(amounts(twoBowls).extraBowl).toBe(6)
})

test("the total is what the lines come to, at either end", () => {
  const quote = quoteOf(twoBowls)
  if (!quote) throw new Error("the plan can be timed")
  const { low, mid, high } = quote.chairMin
  const fixed = 40 + 6 + 6 + 15
  expect(quote.total.low).toBeCloseTo(fixed + low / 2, 9)
  expect(quote.total.mid).toBeCloseTo(fixed + mid / 2, 9)
  expect(quote.total.high).toBeCloseTo(fixed + high / 2, 9)
})

test("there is no quote while the visit cannot be timed", () => {
  expect(quoteOf({ ...priced, timing: { ...usualTiming, breaks: [{ fromMin: 30, toMin: 20 }] } })).toBeNull()
})
