import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { closeBrowser, openBrowser, phone, portrait, tablet, visit } from "../support/browser"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8")

/** What axe (Deque's open rules, WCAG 2.2 AA with target size on) finds on the page as it stands. */
async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axeSource)
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: typeof import("axe-core") }
    const { violations } = await axe.run(document, { rules: { "target-size": { enabled: true } } })
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join("; ")}`,
    )
  })
}

describe.each([
  ["tablet", tablet],
  ["portrait", portrait],
  ["phone", phone],
] as const)("on a %s", (_, size) => {
  it("every screen is clean to axe", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await options(page).nth(1).click()
    await page.getByText("Add by words").click()
    expect(await faults(page)).toEqual([])
    for (const screen of ["Client", "Mixture", "Timing", "Sheets"] as const) {
      await goTo(page, screen)
      await page.getByRole("heading", { name: screen, level: 1 }).waitFor()
      expect(await faults(page)).toEqual([])
    }
    await page.getByRole("button", { name: /Plans…/ }).click()
    await page.getByRole("dialog").waitFor()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press("Escape")
    await goTo(page, "Timing")
    await page.getByRole("button", { name: "Go to the chair" }).click()
    await page.getByRole("button", { name: /^Start/ }).click()
    await page.getByRole("button", { name: "Foil 1 is on" }).click()
    await page.locator(".tile").click()
    await page.getByRole("button", { name: "Looked" }).click()
    expect(await faults(page)).toEqual([])
    await page.getByRole("button", { name: "Something is wrong" }).click()
    expect(await faults(page)).toEqual([])
    expect(problems).toEqual([])
    await close()
  })

  it("nothing is wider than the page", async () => {
    const { page, close } = await visit(size)
    await options(page).first().waitFor()
    for (const screen of ["Placement", "Client", "Mixture", "Timing", "Sheets"] as const) {
      await goTo(page, screen)
      await page.getByRole("heading", { name: screen, level: 1 }).waitFor({ state: "attached" })
      const [wide, seen] = await page.evaluate(() => [
        document.documentElement.scrollWidth,
        window.innerWidth,
      ])
      expect(wide, screen).toBeLessThanOrEqual(seen)
    }
    await close()
  })
})
