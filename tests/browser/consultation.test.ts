import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

it("holds the mix on an answer, on the screen and on the sheet, until it is taken back", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Client")
  const answer = page.getByRole("group", { name: /^Ever reacted to hair colour/ })
  await answer.getByRole("radio", { name: "Yes" }).check()
  await goTo(page, "Mixture")
  await page.getByRole("heading", { name: "A stop holds the mix" }).waitFor()
  expect(await page.getByText("This stop cannot be passed.").isVisible()).toBe(true)
  await goTo(page, "Sheets")
  await page.locator(".preview svg").getByText("NOT CLEARED: a stop holds the mix.").waitFor()

  await goTo(page, "Client")
  await page.getByRole("button", { name: "Hide health answers" }).click()
  expect(await answer.count()).toBe(0)
  await page.getByRole("button", { name: /^Undo: Answer a question/ }).click()
  await goTo(page, "Mixture")
  await page.getByRole("heading", { name: "No stop is open" }).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("settles a conflict of the clock with one touch, and takes it back with one undo", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Timing")
  await page.getByRole("heading", { name: "Nothing is in the way" }).waitFor()
  await page.getByRole("radio", { name: /^Learner/ }).check()
  await page.getByRole("radio", { name: "All in one rinse" }).check()
  await page.getByRole("heading", { name: /things? to settle/ }).waitFor()
  await page.getByRole("button", { name: "Take each foil off when it is ready" }).first().click()
  await page.getByRole("heading", { name: "Nothing is in the way" }).waitFor()
  await page.getByRole("button", { name: /^Undo: Take each foil off/ }).click()
  await page.getByRole("heading", { name: /things? to settle/ }).waitFor()
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
