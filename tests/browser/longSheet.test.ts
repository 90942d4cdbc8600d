import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { busyPlan } from "../support/busyPlan"
import { openPlanText } from "../support/chair"
import { goTo, options } from "../support/screen"
import { en } from "../support/words"

beforeAll(openBrowser)
afterAll(closeBrowser)

const { screen } = en.sheets

it("lays out and prints a long handout beside the screen: it tells how far it is, and can be ended", async () => {
  const { page, problems, close } = await visit()
  await openPlanText(page, busyPlan(150))
  await options(page).first().waitFor()
  await goTo(page, "Sheets")
  const step = page.getByText(/^Laying out step \d+ of \d+…/)
  // The screen answers meanwhile. Whoever only looks after the tap may come too late.
  await Promise.all([
    step.waitFor().then(() => page.getByRole("button", { name: screen.cancel }).click()),
    page.getByRole("radio", { name: en.sheets.names.technique, exact: true }).check(),
  ])
  await page.getByText(screen.stopped).waitFor()
  expect(await page.locator(".small-page").count()).toBe(0)
  await page.getByRole("button", { name: screen.again }).click()
  await page.locator(".small-page").nth(20).waitFor()
  await page.getByRole("group", { name: screen.asPrinted }).waitFor()
  expect(await step.count()).toBe(0)

  const save = page.getByRole("button", { name: screen.save })
  await Promise.all([
    page
      .getByText(/^Printing page \d+ of \d+…/)
      .waitFor()
      .then(() => page.getByRole("button", { name: screen.cancel }).click()),
    save.click(),
  ])
  await page.getByText(/^Printing page/).waitFor({ state: "detached" })
  const download = page.waitForEvent("download")
  await save.click()
  expect((await download).suggestedFilename()).toMatch(/\.technique\.pdf$/)
  const [worker] = page.workers().filter((each) => each.url().includes("sheetWorker"))
  expect(worker).toBeDefined()
  await goTo(page, "Timing")
  await expect.poll(() => page.workers().includes(worker)).toBe(false)
  expect(problems).toEqual([])
  await close()
})

it("lays the pages out on the screen where there is no worker to ask", async () => {
  const { page, problems, close } = await visit()
  await page.evaluate(() => Reflect.deleteProperty(window, "OffscreenCanvas"))
  await options(page).first().waitFor()
  await goTo(page, "Sheets")
  await page.getByRole("group", { name: screen.asPrinted }).waitFor()
  const download = page.waitForEvent("download")
  await page.getByRole("button", { name: screen.save }).click()
  expect((await download).suggestedFilename()).toMatch(/\.pdf$/)
  expect(page.workers().filter((each) => each.url().includes("sheetWorker"))).toEqual([])
  expect(problems).toEqual([])
  await close()
})
