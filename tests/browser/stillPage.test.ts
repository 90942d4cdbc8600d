import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, phone, portrait, tablet, visit } from "../support/browser"
import { atRest, goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

it.each([
  ["tablet", tablet],
  ["portrait", portrait],
  ["phone", phone],
])("scrolls inside its screens alone, so that the bar stays on the %s", async (_, size) => {
  const { page, close } = await visit(size)
  await options(page).first().waitFor()
  for (const screen of ["Client", "Formula", "Timing", "Sheets", "Placement"] as const) {
    await goTo(page, screen)
    await page.getByRole("heading", { name: screen, level: 1 }).waitFor({ state: "attached" })
    if (screen === "Sheets") await page.locator(".preview .sheet").waitFor()
    await atRest(page.locator("main").last())
    const beyond = await page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight)
    expect(beyond, screen).toBe(0)
  }
  await close()
})
