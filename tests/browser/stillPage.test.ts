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

it("holds the plans' buttons where they are while the list below them comes", async () => {
  const { page, close } = await visit(tablet)
  await options(page).first().waitFor()
  await page.evaluate(noteTops)
  await page.getByRole("button", { name: /Plans…/ }).click()
  await page.locator(".shelf li").first().waitFor()
  const tops = await page.evaluate(() => window.tops)
  expect(tops).toHaveLength(1)
  await close()
})

declare global {
  interface Window {
    /** Each place, px from the top of the window, at which the title of a dialog has stood. */
    tops: number[]
  }
}

function noteTops() {
  window.tops = []
  const note = () => {
    const top = document.querySelector("dialog h2")?.getBoundingClientRect().top
    if (top !== undefined && !window.tops.includes(top)) window.tops.push(top)
    requestAnimationFrame(note)
  }
  note()
}
