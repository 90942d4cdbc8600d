import { readdirSync } from "node:fs"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, test } from "vitest"
import { appAddress, closeBrowser, newVisitorOnline, openBrowser } from "../support/browser"
import { howMany } from "./howMany"

/** Every part of the build missing in turn, at the start and in use: something always stands on the page. */

beforeAll(openBrowser)
afterAll(closeBrowser)

const scripts = readdirSync("dist/assets").filter((file) => file.endsWith(".js"))
const every = Math.ceil(scripts.length / howMany({ slice: 4, whole: scripts.length }))
const tried = scripts.filter((_, i) => i % every === 0)

test.each(tried)("%s", async (script) => {
  const context = await newVisitorOnline()
  const page = await context.newPage()
  await page.route(`**/${script}`, (route) => route.fulfill({ status: 404, body: "gone" }))
  await page.goto(appAddress())
  await standsSomething(page)
  for (const screen of ["Client", "Formula", "Timing", "Sheets", "Placement"]) {
    const button = page.getByRole("button", { name: screen, exact: true })
    if (!(await button.isVisible())) continue
    await button.click()
    await standsSomething(page)
    expect(await button.isVisible()).toBe(true)
  }
  await context.close()
})

/** A word, a sign or a picture: within the time a person would wait, never an empty page. */
const standsSomething = (page: Page) =>
  page.waitForFunction(
    () => {
      const root = document.getElementById("root")
      return root !== null && (root.textContent.trim() !== "" || root.querySelector("canvas, svg") !== null)
    },
    undefined,
    { timeout: 20_000 },
  )
