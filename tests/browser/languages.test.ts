import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"

/** Long words and another script on the screens of every width: nothing is cut, nothing wider than the page. */

beforeAll(openBrowser)
afterAll(closeBrowser)

const sizes = [
  [320, 640],
  [834, 1194],
  [1366, 1024],
] as const

/** What a person presses or reads in a table, and whether its words are wider than it is. */
const cut = (page: Page) =>
  page.evaluate(() => {
    const read = "button, .button, .choices label > span, th, td, summary"
    const wide = [...document.querySelectorAll<HTMLElement>(read)].filter(
      (each) =>
        each.checkVisibility() &&
        !each.closest(".unseen, svg, details:not([open]) > :not(summary)") &&
        each.scrollWidth > each.clientWidth + 1,
    )
    return wide.map((each) => `${each.className} “${each.textContent?.slice(0, 40)}”`)
  })

describe.each(["de", "uk"])("in %s", (language) => {
  it.each(sizes)("nothing is cut at %i by %i", async (width, height) => {
    const { page, problems, close } = await visit({
      viewport: { width, height },
      locale: language,
      hasTouch: true,
      isMobile: width < 800,
    })
    expect(await page.locator("html").getAttribute("lang")).toBe(language)
    const faults: string[] = []
    for (const hash of ["#client", "", "#formula", "#timing", "#sheets"]) {
      await page.evaluate((at) => {
        location.hash = at
      }, hash)
      await page.locator("main h1, .pane.large canvas").first().waitFor({ state: "attached" })
      await page.waitForFunction(() => document.querySelector(".part-waiting") === null)
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      )
      faults.push(...(over > 0 ? [`${hash}: wider by ${over}`] : []))
      faults.push(...(await cut(page)).map((each) => `${hash || "map"}: ${each}`))
    }
    expect(faults).toEqual([])
    expect(problems).toEqual([])
    await close()
  })
})
