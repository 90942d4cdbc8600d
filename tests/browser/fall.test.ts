import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, phone, portrait, tablet, visit } from "../support/browser"
import { options, startNewPlan, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const letItFall = (page: Page) => page.getByRole("button", { name: "Let it fall" })
const status = (page: Page) => page.getByRole("region", { name: "Where light falls" }).getByRole("status")

/** Of the pixels of the topmost drawn hair in the large view, how many are as light as lightened strands under dark ones are. */
const darkPixels = (page: Page) =>
  page.locator(".pane.large .pane-paper canvas").evaluateAll((layers) =>
    Math.max(
      ...layers.map((layer) => {
        const canvas = layer as HTMLCanvasElement
        const pixels = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height).data ?? []
        let dark = 0
        for (let i = 0; i < pixels.length; i += 4) if (pixels[i + 3] > 200 && pixels[i] < 110) dark += 1
        return dark / (canvas.width * canvas.height)
      }),
    ),
  )

describe.each([
  ["tablet", tablet],
  ["portrait", portrait],
  ["phone", phone],
] as const)("hair let fall on a %s", (_, size) => {
  it("lies over the large map with its share on either side, and is off again in one touch", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await letItFall(page).click()
    await page.getByRole("heading", { name: "Where light falls, not the colour" }).waitFor()
    await expect
      .poll(() => status(page).textContent(), { timeout: 20_000 })
      .toMatch(/right\s+\d+ %[\s\S]+left\s+\d+ %/)
    await expect.poll(() => darkPixels(page)).toBeGreaterThan(0.1)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      size.viewport.width,
    )
    expect(await axeFaults(page)).toEqual([])
    await page.getByRole("button", { name: "Back to the drawing" }).click()
    await letItFall(page).waitFor()
    await expect.poll(() => darkPixels(page)).toBeLessThan(0.1)
    expect(problems).toEqual([])
    await close()
  })
})

it("is reached by keys alone and left with Escape, and says nothing is light where nothing is drawn", async () => {
  const { page, problems, close } = await visit()
  await startNewPlan(page)
  await tabTo(page, /^Let it fall$/)
  await page.keyboard.press("Enter")
  await expect
    .poll(() => status(page).textContent(), { timeout: 20_000 })
    .toMatch(/right\s+0 %[\s\S]+left\s+0 %/)
  await page.keyboard.press("Escape")
  await letItFall(page).waitFor()
  expect(problems).toEqual([])
  await close()
})
