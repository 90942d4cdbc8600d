import { afterAll, beforeAll, expect, it } from "vitest"
import { usualTiming } from "../../web/core/document/usualTiming"
import { closeBrowser, openBrowser, portrait, visit } from "../support/browser"
import { askedToday, openPlanText } from "../support/chair"
import { samplePlan } from "../support/samples"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

it("lays out two visits with one tap, opens the second, and asks its health anew", async () => {
  const { page, problems, close } = await visit({ ...portrait, hasTouch: true })
  await options(page).first().waitFor()
  const state = { level: 3, history: [], porosity: "usual", stretch: "springs-back" } as const
  const parts = { roots: state, midLengths: state, ends: state }
  await openPlanText(page, {
    ...samplePlan,
    date: new Date().toISOString().slice(0, 10),
    consultation: { ...askedToday(), hair: { top: parts }, liftToLevel: 9 },
    timing: { ...usualTiming, lift: null },
  })
  await goTo(page, "Formula")
  await page.getByRole("button", { name: /^Plan today to level \d, and the next visit$/ }).tap()
  await page.getByText(/^Visit 2 is in your plans: Sample, visit 2, from /).waitFor()
  await page.getByRole("button", { name: "Undo both" }).tap()
  await page.getByRole("button", { name: /^Plan today to level/ }).tap()
  await page.getByRole("button", { name: "Open visit 2" }).tap()
  await expect.poll(() => page.title()).toContain("Sample, visit 2")
  await page
    .getByText(/^Not asked yet: \d/)
    .first()
    .waitFor()
  expect(problems).toEqual([])
  await close()
})
