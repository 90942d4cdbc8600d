import { mkdtempSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { pathToFileURL } from "node:url"
import { afterAll, beforeAll, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, newVisitor, openBrowser, visit } from "../support/browser"
import { goTo, options } from "../support/screen"
import { en } from "../support/words"

beforeAll(openBrowser)
afterAll(closeBrowser)

const folder = mkdtempSync(join(tmpdir(), "partline-page-"))
const phone = { viewport: { width: 390, height: 664 }, hasTouch: true, isMobile: true }

it("saves the sheet to take home as one file that reads on a phone without a script", async () => {
  const { page, problems, close } = await visit(phone)
  await options(page).first().waitFor()
  await goTo(page, "Sheets")
  await page.getByRole("radio", { name: en.sheets.names["take-home"], exact: true }).check()
  await page.locator(".sheet svg").getByText(en.sheets.cards.takeHome.skin).waitFor()
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: en.sheets.screen.readAsPage }).click(),
  ])
  expect(download.suggestedFilename()).toMatch(/\.take-home\.html$/)
  const file = join(folder, "take-home.html")
  await download.saveAs(file)
  await page.getByRole("radio", { name: en.sheets.names.placement, exact: true }).check()
  await page.locator("summary").getByText(en.sheets.screen.fronts.facing).waitFor()
  expect(await page.getByRole("button", { name: en.sheets.screen.readAsPage }).count()).toBe(0)
  expect(problems).toEqual([])
  await close()

  const reader = await newVisitor(phone)
  const read = await reader.newPage()
  const faults: string[] = []
  read.on("console", (message) => faults.push(message.text()))
  read.on("pageerror", (error) => faults.push(String(error)))
  await read.goto(pathToFileURL(file).href)
  expect(faults).toEqual([])
  const said = en.sheets.cards.takeHome
  expect(await read.getByRole("heading", { level: 1 }).count()).toBe(1)
  expect(await read.getByRole("heading", { level: 2 }).allTextContents()).toEqual([
    expect.stringMatching(`^(${said.planned}|${said.done})$`),
    said.skin,
    said.care,
    said.back,
  ])
  const picture = await read.getByRole("img", { name: /^Drawing of the head: / }).boundingBox()
  expect(picture?.width).toBeGreaterThan(200)
  expect(await read.evaluate(() => document.documentElement.scrollWidth)).toBe(390)
  const letterPx = await read
    .locator("main p")
    .evaluateAll((all) => Math.min(...all.map((each) => Number.parseFloat(getComputedStyle(each).fontSize))))
  expect(letterPx).toBeGreaterThanOrEqual(16)
  expect(await axeFaults(read)).toEqual([])
  await reader.close()
})
