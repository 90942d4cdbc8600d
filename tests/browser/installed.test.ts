import type { BrowserContext } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, newVisitor, openBrowser, openPage } from "../support/browser"
import { openHost, type TestHost, thisBuild } from "../support/offlineHost"
import { options } from "../support/screen"
import { en } from "../support/words"

let host: TestHost
beforeAll(async () => {
  await openBrowser()
  host = await openHost(thisBuild())
})
afterAll(async () => {
  await closeBrowser()
  await host.stop()
})

type Shared = { name: string; size: number; type: string; inTap: boolean }
declare global {
  var shared: Shared[]
}

/** No system's share sheet can be had here: the page is told that it is installed, and what it hands over is noted. */
async function installed(context: BrowserContext, calledOff = false) {
  await context.addInitScript((isCalledOff) => {
    const ask = window.matchMedia.bind(window)
    window.matchMedia = (query) =>
      query.includes("standalone") ? ask(query.replace("standalone", "browser")) : ask(query)
    globalThis.shared = []
    navigator.canShare = () => true
    navigator.share = async (what) => {
      const [file] = what?.files ?? []
      const { isActive } = navigator.userActivation
      globalThis.shared.push({ name: file.name, size: file.size, type: file.type, inTap: isActive })
      if (isCalledOff) throw new DOMException("", "AbortError")
    }
  }, calledOff)
  return openPage(context, host.address)
}

it("hands a plan and a PDF that was made before the tap to the share sheet, and downloads nothing", async () => {
  const context = await newVisitor()
  const { page, problems } = await installed(context)
  const downloads: string[] = []
  page.on("download", (download) => downloads.push(download.suggestedFilename()))
  await options(page).first().waitFor()
  await page.getByRole("button", { name: /Plans…/ }).click()
  await page.getByRole("dialog").getByRole("button", { name: en.plans.dialog.saveEverything }).click()
  await page.waitForFunction(() => globalThis.shared.length === 1)
  await page.keyboard.press("Escape")
  await page.locator("header nav button").nth(4).click()
  await page.getByRole("button", { name: en.sheets.screen.save }).click()
  await page.waitForFunction(() => globalThis.shared.length === 2)
  const [plan, sheet] = await page.evaluate(() => globalThis.shared)
  expect(plan).toMatchObject({ name: expect.stringMatching(/\.partline\.json$/), inTap: true })
  expect(sheet).toMatchObject({ name: expect.stringMatching(/\.pdf$/), type: "application/pdf", inTap: true })
  expect(sheet.size).toBeGreaterThan(10_000)
  expect(downloads).toEqual([])
  expect(problems).toEqual([])
  await context.close()
})

it("does not say that a file was saved when the share sheet was closed again", async () => {
  const context = await newVisitor()
  const { page, problems } = await installed(context, true)
  await page.locator("header nav button").nth(4).click()
  await page.getByRole("button", { name: en.sheets.screen.save }).click()
  await page.waitForFunction(() => globalThis.shared.length === 1)
  await page.getByRole("button", { name: en.sheets.screen.save }).and(page.locator(":enabled")).waitFor()
  expect(await page.getByText(/pdf saved/).count()).toBe(0)
  expect(problems).toEqual([])
  await context.close()
})
