import { productSheets } from "../document/salon"
import type { Plan } from "../document/schema"
import { asksForTest, isTestAsked } from "./rules/tonerKinds"
import { mixesAndToners } from "./visitOfPlan"

/** As many as are at hand beside those of the plan: a longer stock is a list. */
const mostOfStock = 3

/** What is to be tested on skin and was not yet: the products of the plan first, then of the stock those that ask for it. */
export function productsToTest(plan: Plan): string[] {
  const tested = (plan.consultation?.alertTests ?? []).map(({ product }) => product)
  const isOpen = (product: string) => !tested.includes(product)
  const planned = mixesAndToners(plan)
    .filter(isTestAsked)
    .map(({ product }) => product)
    .filter(isOpen)
  const stock = productSheets(plan)
    .filter(asksForTest)
    .map(({ name }) => name)
    .filter((name) => isOpen(name) && !planned.includes(name))
  return [...new Set([...planned, ...stock.slice(0, mostOfStock)])]
}
