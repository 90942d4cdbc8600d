import { readFileSync } from "node:fs"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { readPdfText } from "../support/pdfText"
import { options, startNewPlanByKeys, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

it("carries the job from an empty plan to the printed map by keyboard alone", async () => {
  const { page, problems, close } = await visit()
  const press = async (...keys: string[]) => {
    for (const key of keys) await page.keyboard.press(key)
  }
  await options(page).first().waitFor()

  await startNewPlanByKeys(page)

  await tabTo(page, /^Client$/)
  await press("Enter")
  await page.getByRole("heading", { name: "Client", level: 1 }).waitFor()
  await tabTo(page, /Initials/)
  await page.keyboard.type("K.B.")
  await press("Tab")
  await tabTo(page, /^Placement$/, 80, "Shift+Tab")
  await press("Enter")

  await tabTo(page, /Add by typing/)
  await press("Enter")
  await tabTo(page, /^Add slice/)
  await press("Enter")
  expect(await options(page).count()).toBe(1)
  expect(await page.getByRole("status").last().textContent()).toBe("Add slice, left recession to left temple")

  await tabTo(page, /^Foils in order/, 80, "Shift+Tab")
  await press("m")
  expect(await options(page).count()).toBe(2)
  expect(await options(page).nth(1).textContent()).toMatch(/2Slice, right/)
  await press("Alt+ArrowUp")
  expect(await options(page).nth(0).textContent()).toMatch(/2Slice, right/)

  await tabTo(page, /^Repeat behind/)
  await press("Enter")
  // Behind one of a pair come two, a pair as well.
  expect(await options(page).count()).toBe(4)
  await tabTo(page, /^All settings/)
  await press("Enter")
  await tabTo(page, /^Slice$/)
  await press("ArrowRight", "ArrowRight")
  expect(await options(page).nth(2).textContent()).toMatch(/3Backcomb/)

  await tabTo(page, /^Foils in order/, 80, "Shift+Tab")
  await press("Delete")
  expect(await options(page).count()).toBe(3)
  await press("Control+z")
  expect(await options(page).count()).toBe(4)

  await tabTo(page, /^Sheets$/, 80, "Shift+Tab")
  await press("Enter")
  await page.locator(".preview svg").first().waitFor()
  await tabTo(page, /^Save PDF/)
  const [download] = await Promise.all([page.waitForEvent("download"), press("Enter")])
  const text = await readPdfText(readFileSync(await download.path()))
  expect(text).toContain("K.B.")
  expect(text).toContain("Backcomb")
  expect(problems).toEqual([])
  await close()
})
