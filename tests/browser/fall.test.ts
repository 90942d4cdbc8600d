import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, sizes, visit } from "../support/browser"
import { darkPixels } from "../support/darkPixels"
import { options, startNewPlan, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const letItFall = (page: Page) => page.getByRole("button", { name: "Show hair down" })
const status = (page: Page) => page.getByRole("region", { name: "Hair down" }).getByRole("status")

/** How much of the layer that is darkest is as dark as medium blonde hair: hardly any of it before hair falls. */
const darkShare = async (page: Page) =>
  Math.max(...(await darkPixels(page, 190)).map(({ dark, all }) => dark / all))

describe.each(sizes)("hair let fall on a %s", (_, size) => {
  it("lies over the large map with its share on either side, and is off again in one touch", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await letItFall(page).click()
    await page.getByRole("heading", { name: "A sketch from pigment figures" }).waitFor()
    await expect
      .poll(() => status(page).textContent(), { timeout: 20_000 })
      .toMatch(/^The client’s right\s+\d+%.*The client’s left\s+\d+%/s)
    await expect.poll(() => darkShare(page), { timeout: 20_000 }).toBeGreaterThan(0.1)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      size.viewport.width,
    )
    expect(await axeFaults(page)).toEqual([])
    await page.getByRole("slider", { name: "Weeks later" }).fill("10")
    await page.getByText("10 weeks: roots grown 23–32 mm (range)").waitFor()
    await page.getByRole("button", { name: "Show to the client" }).click()
    await page.getByText("A sketch of where the light falls. The strand test shows the colour.").waitFor()
    expect(await page.getByRole("banner").isVisible()).toBe(false)
    expect(await page.getByText("%").isVisible()).toBe(false)
    const [map] = await page
      .locator(".pane.large")
      .evaluateAll((panes) => panes.map((pane) => pane.clientHeight))
    expect(map).toBeGreaterThan(0.75 * size.viewport.height)
    expect(await axeFaults(page)).toEqual([])
    await page.keyboard.press("Escape")
    await page.getByRole("button", { name: "Back to the drawing" }).click()
    await letItFall(page).waitFor()
    await expect.poll(() => darkShare(page), { timeout: 20_000 }).toBeLessThan(0.1)
    expect(problems).toEqual([])
    await close()
  })
})

it("is reached by keys alone and left with Escape, and says nothing is light where nothing is drawn", async () => {
  const { page, problems, close } = await visit()
  await startNewPlan(page)
  await tabTo(page, /^Show hair down$/)
  await page.keyboard.press("Enter")
  await expect
    .poll(() => status(page).textContent(), { timeout: 20_000 })
    .toMatch(/^The client’s right\s+0%.*The client’s left\s+0%/s)
  await page.keyboard.press("Escape")
  await letItFall(page).waitFor()
  expect(problems).toEqual([])
  await close()
})
