import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { questionRows } from "../../web/core/cautions/asking/questions"
import { questionNames } from "../../web/core/document/consultation"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { takeClock } from "../support/chair"
import { options, startNewPlanByKeys, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000

/** Tab to something and press Enter: all that this person does. */
async function go(page: Page, name: RegExp, key = "Tab") {
  await tabTo(page, name, 120, key)
  await page.keyboard.press("Enter")
}

async function drawTwoFoils(page: Page) {
  await startNewPlanByKeys(page)
  await go(page, /^Placement$/)
  await go(page, /Add by typing/)
  await go(page, /^Add slice/)
  await tabTo(page, /^Foils in order/, 80, "Shift+Tab")
  await page.keyboard.press("m")
  await expect.poll(() => options(page).count()).toBe(2)
}

/** All that can hurt, asked and looked at: age, scalp, the questions asked alone, the others at once, the hair. */
async function askAll(page: Page) {
  await go(page, /^Client$/, "Shift+Tab")
  await tabTo(page, /^Age, not asked/)
  await page.keyboard.type("34")
  await page.keyboard.press("Enter")
  await tabTo(page, /^Calm/)
  await page.keyboard.press("Space")
  for (const _ of alone) {
    await tabTo(page, /^Yes/)
    await page.keyboard.press("ArrowRight")
  }
  await go(page, /^I asked all of these/)
  await tabTo(page, /^Never treated/)
  await page.keyboard.press("Space")
  await tabTo(page, /^Springs back/)
  await page.keyboard.press("Space")
}

const alone = questionNames.filter((name) => questionRows[name].alone)

it("carries the clock from an empty plan through Timing and the chair to the rinse by keyboard alone", async () => {
  const { page, problems, close } = await visit()
  await takeClock(page)
  await drawTwoFoils(page)
  await askAll(page)

  await go(page, /^Timing$/, "Shift+Tab")
  await page.getByRole("heading", { name: "Timing", level: 1 }).waitFor()
  await go(page, /^Change$/)
  await tabTo(page, /^Each when it is ready/)
  await page.keyboard.press("ArrowDown")
  expect(await page.getByRole("radio", { name: "All in one rinse" }).isChecked()).toBe(true)
  await page.keyboard.press("Control+z")
  expect(await page.getByRole("radio", { name: "All in one rinse" }).isChecked()).toBe(false)
  await tabTo(page, /^Minute of the visit/)
  await page.keyboard.press("Home")

  await go(page, /^Start at the chair/, "Shift+Tab")
  await go(page, /^Start the clock/)
  await page.clock.runFor(3 * minute)
  await go(page, /^Foil 1 is on/)
  await page.clock.runFor(minute)
  await go(page, /^Foil 2 is on/)
  await go(page, /^Undo tap/)
  await go(page, /^Foil 2 is on/)
  await page.clock.runFor(10 * minute)
  await go(page, /^Foils? 1.*check now/)
  await go(page, /^Checked/)
  await go(page, /^Half a level lighter/)
  for (const answer of [/^OK/, /^Limp/, /^Warm/, /^Moist/, /^Save check/]) await go(page, answer)
  await go(page, /^Something is wrong/, "Shift+Tab")
  await go(page, /^Hot/)
  await go(page, /^Back to the clock/)
  await go(page, /^Foil 2\d+ min/)
  await go(page, /^Off/)
  await go(page, /^Rinse now/)
  await go(page, /^Rinse all/)
  await go(page, /^End the service/)
  await page.getByRole("heading", { name: "Planned and actual" }).waitFor()
  await go(page, /^Leave/)
  const rows = page.getByRole("region", { name: "Planned and actual times" }).getByRole("row")
  expect(await rows.count()).toBe(3)
  expect(problems).toEqual([])
  await close()
})
