import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { isFoil } from "../../geometry/section/section"
import { usualTiming } from "../../web/core/document/usualTiming"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { askedToday, openPlanText, putOn, sitDown, takeClock } from "../support/chair"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000

const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true })
const scalpIs = (page: Page, seen: string) =>
  page
    .getByRole("group", { name: /^Scalp/ })
    .first()
    .getByLabel(seen, { exact: true })

/** A service with heat planned and one of two foils on, and then another answer, or none, about the scalp on the Client screen. */
async function startThenSay(page: Page, scalp: "Broken" | "nothing") {
  await options(page).first().waitFor()
  // Two slices well behind the hairline, where heat may be planned.
  const busy = busyPlan(40)
  const sections = busy.sections.filter(({ kind }) => kind === "slice").slice(-2)
  const known = askedToday()
  const timing = { ...usualTiming, heatMin: 5 }
  await openPlanText(page, { ...busy, sections, timing, date: known.scalp?.on ?? "", consultation: known })
  await takeClock(page)
  await sitDown(page)
  const [first, second] = sections.filter(isFoil)
  await putOn(page, first.mapNumber)
  expect(await button(page, /^Mix A now/).isEnabled()).toBe(true)
  expect(await button(page, `Foil ${second.mapNumber} is on`).isEnabled()).toBe(true)
  await button(page, /^Leave/).click()
  await goTo(page, "Client")
  if (scalp === "nothing") await scalpIs(page, "Calm").press("Delete")
  else await scalpIs(page, scalp).click()
  await button(page, "To the chair").click()
  return second.mapNumber
}

/** No foil, bowl, coat or heat is begun; what is on is checked, taken off and rinsed. */
async function expectHeld(page: Page, second: number) {
  expect(await button(page, `Foil ${second} is on`).isDisabled()).toBe(true)
  expect(await button(page, /^Mix A now/).isDisabled()).toBe(true)
  // What was on before may be said still.
  expect(await button(page, "It went on earlier").isEnabled()).toBe(true)
  await page.locator(".tile").first().click()
  expect(await button(page, "Re-coated").isDisabled()).toBe(true)
  for (const goesOn of ["Checked", "Off", "Burning"])
    expect(await button(page, goesOn).isEnabled()).toBe(true)
  expect(await button(page, /^Rinse now/).isEnabled()).toBe(true)
  // The bowl runs out: the call for a fresh one stands, and takes no tap.
  await page.clock.runFor(61 * minute)
  const fresh = page
    .locator(".call", { hasText: "tap when a fresh bowl is mixed" })
    .getByRole("button")
    .first()
  await fresh.waitFor()
  expect(await fresh.isDisabled()).toBe(true)
  await button(page, "It went on earlier").click()
  expect(await button(page, /^Heat on/).isDisabled()).toBe(true)
  await page.clock.runFor(2000)
  await button(page, "Off").click()
  await expect.poll(() => page.locator(".tile").count()).toBe(1)
}

it("begins no foil, bowl, coat or heat once a stop comes up after the start; what is on is checked, taken off and rinsed", async () => {
  const { page, problems, close } = await visit()
  const second = await startThenSay(page, "Broken")
  await page.getByText("A stop came up. Begin no more foils and mix no bowl.").waitFor()
  await page
    .getByRole("alert")
    .getByText(/^Do not mix: /)
    .first()
    .waitFor()
  await expectHeld(page, second)
  expect(problems).toEqual([])
  await close()
})

it("holds the same while a question is open again, names it, and goes on once it is answered", async () => {
  const { page, problems, close } = await visit()
  const second = await startThenSay(page, "nothing")
  await page.getByText("A question is open again. Begin no more foils and mix no bowl").waitFor()
  const open = page.getByRole("list", { name: "Not asked yet" }).getByRole("button")
  expect(await open.count()).toBe(1)
  await open.click()
  await scalpIs(page, "Calm").click()
  await button(page, "To the chair").click()
  await expect.poll(() => button(page, `Foil ${second} is on`).isEnabled()).toBe(true)
  await button(page, /^Leave/).click()
  await goTo(page, "Client")
  await scalpIs(page, "Calm").press("Delete")
  await button(page, "To the chair").click()
  await page.getByText("A question is open again.").waitFor()
  await expectHeld(page, second)
  expect(problems).toEqual([])
  await close()
})
