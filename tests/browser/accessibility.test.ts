import type { Locator } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults as faults } from "../support/axe"
import { closeBrowser, openBrowser, sizes, tablet, visit } from "../support/browser"
import { startClock } from "../support/chair"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

describe.each(sizes)("on a %s", (_, size) => {
  it("every screen is clean to axe", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await options(page).nth(1).click()
    await page.getByText("Add by typing").click()
    expect(await faults(page)).toEqual([])
    await page.getByRole("button", { name: "Stack behind…" }).click()
    await page.getByRole("heading", { name: /^Stack behind/ }).waitFor()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press("Escape")
    await page.getByRole("radio", { name: "Slice", exact: true }).first().check()
    await page.getByRole("radio", { name: "Straight" }).check()
    await page.getByRole("checkbox", { name: "Snap" }).waitFor()
    expect(await faults(page)).toEqual([])
    for (const screen of ["Client", "Formula", "Timing", "Sheets"] as const) {
      await goTo(page, screen)
      await page.getByRole("heading", { name: screen, level: 1 }).waitFor()
      expect(await faults(page)).toEqual([])
    }
    await page.getByRole("button", { name: /Plans…/ }).click()
    await page.getByRole("dialog").waitFor()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press("Escape")
    await goTo(page, "Timing")
    await page.getByRole("button", { name: "Start at the chair" }).click()
    await startClock(page)
    // By keys: a second touch within a second where the first one was is taken for a slip of the hand.
    await page.getByRole("button", { name: "Foil 1 is on" }).press("Enter")
    await page.locator(".tile").press("Enter")
    await page.getByRole("button", { name: "Checked" }).press("Enter")
    await page.getByRole("button", { name: "Save check" }).waitFor()
    expect(await faults(page)).toEqual([])
    await page.getByRole("button", { name: "Something is wrong" }).click()
    expect(await faults(page)).toEqual([])
    expect(problems).toEqual([])
    await close()
  })

  it("nothing is wider than the page", async () => {
    const { page, close } = await visit(size)
    await options(page).first().waitFor()
    for (const screen of ["Placement", "Client", "Formula", "Timing", "Sheets"] as const) {
      await goTo(page, screen)
      await page.getByRole("heading", { name: screen, level: 1 }).waitFor({ state: "attached" })
      // A phone's own inner width grows with what is too wide for it, so it is the screen that counts.
      const wide = await page.evaluate(() => document.documentElement.scrollWidth)
      expect(wide, screen).toBeLessThanOrEqual(size.viewport.width)
    }
    await close()
  })
})

const screens = ["Placement", "Client", "Formula", "Timing", "Sheets"] as const

describe("however the page is looked at", () => {
  it("made twice as large, the map keeps its room and all else is scrolled to", async () => {
    // WCAG 2.2, 1.4.4: text up to 200 % without loss; a tablet's page is then half as wide and half as high.
    const doubled = { viewport: { width: 683, height: 512 }, deviceScaleFactor: 2 }
    const { page, problems, close } = await visit(doubled)
    const last = options(page).last()
    await last.scrollIntoViewIfNeeded()
    await last.click()
    await page.getByRole("heading", { name: "Left-out hair, centre front" }).waitFor()
    const map = await page.locator(".pane.large .pane-paper").boundingBox()
    expect(map?.height).toBeGreaterThan(250)
    for (const screen of screens) {
      await goTo(page, screen)
      await page.getByRole("heading", { name: screen, level: 1 }).waitFor({ state: "attached" })
      expect(await page.evaluate(() => document.documentElement.scrollWidth), screen).toBeLessThanOrEqual(683)
      expect(await faults(page), screen).toEqual([])
    }
    expect(problems).toEqual([])
    await close()
  })

  it("in the colours the system forces, drawings keep their paper under their ink", async () => {
    const { page, close } = await visit({ ...tablet, forcedColors: "active", colorScheme: "dark" })
    const backgroundOf = (place: string) =>
      page
        .locator(place)
        .first()
        .evaluate((element) => getComputedStyle(element).backgroundColor)
    expect(await backgroundOf(".map")).toBe("rgb(251, 248, 242)")
    await goTo(page, "Timing")
    expect(await backgroundOf("main svg")).toBe("rgb(251, 248, 242)")
    await close()
  })

  it("in the colours the system forces, what is chosen, what is due and what is a colour can be told", async () => {
    const { page, problems, close } = await visit({ ...tablet, forcedColors: "active" })
    await options(page).first().waitFor()
    const backgroundOf = (part: Locator) =>
      part.evaluate((element) => getComputedStyle(element).backgroundColor)
    const borderOf = (part: Locator) =>
      part.evaluate((element) => getComputedStyle(element).borderBottomColor)
    const screen = (name: string) => page.getByRole("navigation").getByRole("button", { name })
    expect(await borderOf(screen("Placement"))).not.toBe(await borderOf(screen("Timing")))
    const chip = (tool: string) => page.locator(".tool-choices label", { hasText: tool }).locator("> span")
    expect(await backgroundOf(chip("Select"))).not.toBe(await backgroundOf(chip("Slice")))
    await goTo(page, "Client")
    const levels = page.getByRole("group", { name: /^Level now/ }).locator(".swatch")
    await levels.first().waitFor()
    const swatches = await levels.all()
    const colours = await Promise.all(swatches.map(backgroundOf))
    expect(new Set(colours).size).toBe(10)
    await goTo(page, "Timing")
    await page.getByRole("button", { name: "Start at the chair" }).click()
    await startClock(page)
    const alarm = page.getByRole("button", { name: "Something is wrong" })
    expect(await backgroundOf(alarm)).not.toBe(
      await backgroundOf(page.getByRole("button", { name: "Leave" })),
    )
    await page.getByRole("button", { name: "Foil 1 is on" }).press("Enter")
    const tile = page.locator(".tile")
    const before = await backgroundOf(tile)
    await tile.press("Enter")
    await page.getByRole("button", { name: "Checked" }).waitFor()
    expect(await backgroundOf(tile)).not.toBe(before)
    expect(problems).toEqual([])
    await close()
  })

  it("nothing moves for those who want no motion", async () => {
    const { page, close } = await visit({ ...tablet, reducedMotion: "reduce" })
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll("*")]
        .filter((element) => {
          const { transitionDuration, animationName } = getComputedStyle(element)
          return transitionDuration !== "0s" || animationName !== "none"
        })
        .map((element) => element.className),
    )
    expect(moving).toEqual([])
    await close()
  })
})
