import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { goTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

/** The sizes that people hold: phones with their bars, tablets either way, a page made two and four times as large, a projector. */
const everySize = [
  [390, 664],
  [360, 640],
  [320, 640],
  [844, 390],
  [683, 512],
  [768, 1024],
  [834, 1194],
  [1024, 690],
  [1080, 740],
  [1194, 834],
  [1366, 1024],
  [1920, 1080],
] as const

/** WCAG 2.2, success criterion 1.4.12: what a reader may set without losing anything. */
const textSpacing =
  "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }"

const screens = ["Client", "Placement", "Formula", "Timing", "Sheets"] as const

describe.each(everySize)("at %i by %i", (width, height) => {
  const hand = { viewport: { width, height }, hasTouch: true, isMobile: width < 800 }

  it("lets every tool be touched, and no screen is wider than the page", async () => {
    const { page, problems, close } = await visit(hand)
    const tools = page.locator(".tool-choices label")
    await tools.first().waitFor()
    for (const tool of await tools.all()) {
      await tool.scrollIntoViewIfNeeded()
      const box = await tool.boundingBox()
      expect(Math.min(box?.height ?? 0, box?.width ?? 0)).toBeGreaterThanOrEqual(44)
      await tool.tap()
      expect(await tool.locator("input").isChecked()).toBe(true)
    }
    // With the fields of a tool that draws, which are the most.
    await page.getByRole("radio", { name: "Slice", exact: true }).first().check()
    // The page, and the screen in it, which scrolls by itself.
    const tooWide = () =>
      page.evaluate(() => {
        const parts = [document.documentElement, ...document.querySelectorAll("main")]
        return Math.max(...parts.map(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth))
      })
    const faults: string[] = []
    for (const screen of screens) {
      await goTo(page, screen)
      await page.getByRole("main").waitFor()
      if ((await tooWide()) > 0) faults.push(`${screen}: wider by ${await tooWide()}`)
    }
    await goTo(page, "Placement")
    for (const button of await page.locator(".foot .button, .bar nav button").all())
      if (await button.evaluate(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth))
        faults.push(`cut: ${await button.textContent()}`)
    await page.evaluate((css) => {
      const sheet = new CSSStyleSheet()
      sheet.replaceSync(css)
      document.adoptedStyleSheets = [sheet]
    }, textSpacing)
    for (const screen of screens) {
      await goTo(page, screen)
      if ((await tooWide()) > 0) faults.push(`${screen}, letters apart: wider by ${await tooWide()}`)
    }
    expect(faults).toEqual([])
    expect(problems).toEqual([])
    await close()
  })
})
