import { afterAll, beforeAll, expect, it } from "vitest"
import { isFoil } from "../../geometry/section/section"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { askedToday, openPlanText, putOn, sitDown, takeClock } from "../support/chair"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000

it("begins no foil, bowl or coat once a stop comes up after the start; what is on is checked, taken off and rinsed", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  const plan = busyPlan(3)
  const known = askedToday()
  const [first, second] = plan.sections.filter(isFoil)
  await openPlanText(page, { ...plan, date: known.scalp?.on ?? "", consultation: known })
  await takeClock(page)
  await sitDown(page)
  const button = (name: string | RegExp) => page.getByRole("button", { name, exact: true })
  await button(/^Mix A now/).click()
  await putOn(page, first.mapNumber)
  expect(await button(`Foil ${second.mapNumber} is on`).isEnabled()).toBe(true)
  await button(/^Leave/).click()
  await goTo(page, "Client")
  await page
    .getByRole("group", { name: /^Scalp/ })
    .first()
    .getByLabel("Broken", { exact: true })
    .click()
  await button("To the chair").click()

  await page.getByText("A stop came up. Begin no more foils and mix no bowl.").waitFor()
  await page
    .getByRole("alert")
    .getByText(/^Do not mix: /)
    .first()
    .waitFor()
  expect(await button(`Foil ${second.mapNumber} is on`).isDisabled()).toBe(true)
  // What was on before the stop may be said still.
  expect(await button("It went on earlier").isEnabled()).toBe(true)
  await page.locator(".tile").first().click()
  expect(await button("Re-coated").isDisabled()).toBe(true)
  for (const goesOn of ["Checked", "Off", "Burning"]) expect(await button(goesOn).isEnabled()).toBe(true)
  expect(await button(/^Rinse now/).isEnabled()).toBe(true)
  // The bowl runs out: the call for a fresh one stands, and takes no tap.
  await page.clock.runFor(61 * minute)
  const fresh = page
    .locator(".call", { hasText: "tap when a fresh bowl is mixed" })
    .getByRole("button")
    .first()
  await fresh.waitFor()
  expect(await fresh.isDisabled()).toBe(true)
  await button("Off").click()
  await page.locator(".tile").first().waitFor({ state: "detached" })
  expect(problems).toEqual([])
  await close()
})
