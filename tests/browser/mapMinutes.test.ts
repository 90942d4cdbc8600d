import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, sizes, visit } from "../support/browser"
import { darkPixels } from "../support/darkPixels"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const slider = (page: Page) => page.getByRole("slider", { name: "Minute shown on the map" })
const said = (page: Page) => slider(page).getAttribute("aria-valuetext")

/** How many pixels of the large view are as good as black. */
const darkness = async (page: Page) => (await darkPixels(page, 60)).reduce((sum, { dark }) => sum + dark, 0)

describe.each(sizes)("the map in time on a %s", (_, size) => {
  it("is scrubbed by keys and by hand, told in a list, and off again in one touch", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await page.getByRole("button", { name: "Minute by minute" }).click()
    await expect.poll(() => slider(page).evaluate((input) => input === document.activeElement)).toBe(true)
    await page.keyboard.press("Home")
    expect(await said(page)).toBe("Minute 0: 0 foils on, 9 to come, 0 off")
    const before = await darkness(page)
    for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight")
    expect(await said(page)).toContain("Minute 5: 1 foil on")
    await page
      .getByRole("list", { name: "Foils at minute 5" })
      .getByText("Foil 1: on for 1 min")
      .waitFor({ state: "attached" })
    const box = await slider(page).boundingBox()
    if (!box) throw new Error("no slider")
    await page.mouse.click(box.x + 0.7 * box.width, box.y + box.height / 2)
    expect(await said(page)).toMatch(/^Minute (1[5-9]|[2-9]\d):/)
    await expect.poll(() => darkness(page)).toBeGreaterThan(before)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      size.viewport.width,
    )
    expect(await axeFaults(page)).toEqual([])
    await page.getByRole("button", { name: "Back to the drawing" }).click()
    await page.getByRole("button", { name: "Minute by minute" }).waitFor()
    expect(problems).toEqual([])
    await close()
  })
})

it("is reached from the clock at the minute shown there, and left with Escape", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Timing")
  await page.getByRole("slider", { name: "Minute of the visit" }).focus()
  await page.keyboard.press("Home")
  for (let i = 0; i < 7; i++) await page.keyboard.press("ArrowRight")
  await page.getByRole("button", { name: "Show on the large map" }).click()
  await expect.poll(() => said(page)).toMatch(/^Minute 7:/)
  // From wherever the focus is.
  await page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur())
  await page.keyboard.press("Escape")
  await page.getByRole("region", { name: "Totals" }).waitFor()
  expect(problems).toEqual([])
  await close()
})
