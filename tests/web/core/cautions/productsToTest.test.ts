import { describe, expect, it } from "vitest"
import { houseProducts } from "../../../../presets/formula/houseProducts"
import { productsToTest } from "../../../../web/core/cautions/productsToTest"
import { newPlan } from "../../../../web/core/document/newPlan"
import { newSalon } from "../../../../web/core/document/salon"
import type { Plan } from "../../../../web/core/document/schema"
import { askedAll } from "../../../support/answers"

const [powder, , cream, toner, rootShade] = houseProducts
const plan: Plan = newPlan(new Date("2026-06-10T10:00:00Z"))
const test = (product: string) => ({
  product,
  place: "",
  appliedAt: "2026-06-01T10:00:00Z",
  result: null,
  validUntil: null,
  visit: null,
  changedSince: null,
})
const salonOf = (...names: string[]): Plan["salon"] => ({
  ...newSalon(),
  sheets: names.map((name) => ({ ...toner, id: name, name })),
})

describe("what is to be tested on skin", () => {
  it("is at hand before a toner is chosen: what of the stock asks for a test, not the powder, which does not say", () => {
    expect(productsToTest(plan)).toEqual([cream.name, toner.name, rootShade.name])
    expect(productsToTest(plan)).not.toContain(powder.name)
  })
  it("is without what was applied already", () => {
    const consultation = askedAll("2026-06-10", { alertTests: [test(toner.name)] })
    expect(productsToTest({ ...plan, consultation })).toEqual([cream.name, rootShade.name])
  })
  it("begins with the products of the plan, and takes no more than three of a longer stock", () => {
    const chosen = { product: "D", developerVolume: 10, parts: 2 }
    const stocked: Plan = {
      ...plan,
      salon: salonOf("A", "B", "C", "D"),
      toning: { toner: chosen, rootShade: null },
    }
    expect(productsToTest(stocked)).toEqual(["D", "A", "B", "C"])
  })
})
