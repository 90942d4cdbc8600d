import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { goTo, options, tabTo } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const heading = (page: Page, name: RegExp) => page.getByRole("heading", { name })

/** Waits until the sheet on the screen says this; its sentences run over lines. */
const readsOnSheet = (page: Page, words: RegExp) =>
  expect
    .poll(async () => (await page.locator(".preview .sheet").textContent())?.replace(/\s+/g, " "), {
      timeout: 20_000,
    })
    .toMatch(words)

it("holds the mix on an answer, on the screen and on the sheet, until it is taken back", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Client")
  const answer = page.getByRole("group", { name: /^Ever reacted to hair colour/ })
  await answer.getByRole("radio", { name: "Yes" }).check()
  await goTo(page, "Formula")
  await heading(page, /^Do not mix: 1 stop\.$/).waitFor()
  expect(await page.getByText("This stop cannot be overridden.").isVisible()).toBe(true)
  await goTo(page, "Sheets")
  await readsOnSheet(page, /NOT CLEARED: DO NOT MIX\. 1 stop is open\./)

  await goTo(page, "Client")
  await page.getByRole("button", { name: "Hide health answers" }).click()
  expect(await answer.count()).toBe(0)
  await page.getByRole("button", { name: /^Undo: Answer a question/ }).click()
  await goTo(page, "Formula")
  await heading(page, /^Cleared on /).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("overrides a stop in writing by keys alone, prints the reason, and holds again when that is undone", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Client")
  await page
    .getByRole("group", { name: /^Relaxer, perm/ })
    .getByRole("radio", { name: "Yes" })
    .check()
  await goTo(page, "Formula")
  await heading(page, /^Do not mix: 1 stop\.$/).waitFor()
  await tabTo(page, /^Override in writing/)
  await page.keyboard.press("Enter")
  await tabTo(page, /^Override this stop/)
  await page.keyboard.press("Enter")
  await page.getByText("Enter a reason and your name first.").waitFor()
  await tabTo(page, /^Reason/, 20, "Shift+Tab")
  await page.keyboard.type("Strand tested, holds")
  await page.keyboard.press("Tab")
  await page.keyboard.type("M.")
  await page.keyboard.press("Tab")
  await page.keyboard.press("Enter")
  const title = heading(page, /^Cleared on /)
  await title.waitFor()
  expect(await title.evaluate((each) => each === document.activeElement)).toBe(true)
  await goTo(page, "Sheets")
  await readsOnSheet(page, /“Recent relaxer or perm” overridden by M\.: Strand tested, holds/)
  await goTo(page, "Formula")
  await page
    .locator(".settled", { hasText: "Strand tested, holds" })
    .getByRole("button", { name: "Undo the override" })
    .click()
  await heading(page, /^Do not mix: 1 stop\.$/).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("settles a conflict of the clock with one touch, and takes it back with one undo", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Timing")
  await page.getByRole("heading", { name: "No clashes in the schedule" }).waitFor()
  await page.getByRole("button", { name: "Change", exact: true }).click()
  await page.getByRole("radio", { name: /^Learner/ }).check()
  await page.getByRole("radio", { name: "All in one rinse" }).check()
  await page.getByRole("heading", { name: /^\d+ clash/ }).waitFor()
  await page.getByRole("button", { name: "Take each foil off when it is ready" }).first().click()
  await page.getByRole("heading", { name: "No clashes in the schedule" }).waitFor()
  await page.getByRole("button", { name: /^Undo: Take each foil off/ }).click()
  await page.getByRole("heading", { name: /^\d+ clash/ }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("keeps the foil editor's layout after other screens have been seen", async () => {
  const { page, problems, close } = await visit()
  await options(page).nth(1).click()
  const layout = () => page.locator("dl.figures").evaluate((list) => getComputedStyle(list).display)
  await page.locator("dl.figures").waitFor()
  const before = await layout()
  await goTo(page, "Timing")
  await page.getByRole("heading", { name: "The head at a minute" }).waitFor()
  await goTo(page, "Placement")
  await page.locator("dl.figures").waitFor()
  expect(await layout()).toBe(before)
  expect(problems).toEqual([])
  await close()
})
