import { afterAll, beforeAll, expect, it } from "vitest"
import { isFoil } from "../../geometry/section/section"
import { newConsultation } from "../../web/core/document/consultation"
import { exampleVisit } from "../../web/core/file/exampleVisit"
import { dayAfter } from "../../web/core/text/dayAfter"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { askedToday, openPlanText, putOn, sitDown, takeClock } from "../support/chair"
import { goTo, options } from "../support/screen"
import { en } from "../support/words"

beforeAll(openBrowser)
afterAll(closeBrowser)

it("holds a toner that was chosen after the start and never patch tested; what is on goes on", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  const plan = busyPlan(1)
  const known = askedToday()
  const consultation = { ...known, liftToLevel: 9, finish: "cool" } as const
  const [foil] = plan.sections.filter(isFoil)
  await openPlanText(page, { ...plan, date: known.scalp?.on ?? "", consultation })
  await takeClock(page)
  await sitDown(page)
  await putOn(page, foil.mapNumber)
  await page.getByRole("button", { name: /^Leave/ }).click()
  await goTo(page, "Formula")
  const toners = page.getByRole("group", { name: "Toner", exact: true }).first()
  await toners.getByLabel("House toner", { exact: true }).click()
  await page.getByRole("button", { name: "To the chair" }).click()
  await page.locator(".tile").first().click()
  await page.getByRole("button", { name: "Off", exact: true }).click()
  const toner = page.getByRole("button", { name: /^Toner.* on\b/ }).first()
  await toner.waitFor()
  expect(await toner.isDisabled()).toBe(true)
  await page
    .getByRole("alert")
    .getByText(/^Do not mix: No patch test with House toner \(invented\)/)
    .first()
    .waitFor()
  expect(await page.getByRole("button", { name: "End the service" }).isEnabled()).toBe(true)
  expect(problems).toEqual([])
  await close()
})

it("holds the toner's bowl by a stop of the whole visit, whose override was for another one", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  const example = exampleVisit({ moment: new Date().toISOString(), zone: "Europe/London" })
  const before = dayAfter(example.date, -28)
  const consultation = { ...newConsultation(), ...example.consultation }
  const passes = consultation.passes.map((pass) => ({ ...pass, on: before, visit: before }))
  await openPlanText(page, { ...example, consultation: { ...consultation, passes } })
  await goTo(page, "Formula")
  await page
    .getByText(/^Was overridden on .* by M\.: .* Ask again\.$/)
    .first()
    .waitFor()
  await page
    .getByRole("region", { name: en.formula.tone.title })
    .getByText(en.cautions.panel.doNotMix, { exact: true })
    .waitFor()
  expect(problems).toEqual([])
  await close()
})
