import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, visit } from "../support/browser"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

it("writes down a strand test and says when to look; scrubs the head in time by keys", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Timing")
  await page.getByRole("radio", { name: "From level to level" }).check()
  await page.getByRole("radio", { name: "Mix A, 20 vol" }).check()
  await page.getByRole("button", { name: "Add a look at the strand" }).click()
  await page.getByRole("textbox", { name: "Level seen" }).fill("8")
  await page.keyboard.press("Tab")
  await page.getByText(/^Look from minute 10, expected \d+ to \d+, never past 45\.$/).waitFor()
  await page.getByRole("textbox", { name: "Level seen" }).fill("6")
  await page.keyboard.press("Tab")
  await page.getByText(/darker than level 7 before it: hair does not go back/).waitFor()

  const slider = page.getByRole("slider", { name: "Minute of the visit" })
  await slider.focus()
  await page.keyboard.press("Home")
  expect(await slider.getAttribute("aria-valuetext")).toBe("Minute 0: 0 foils on, 9 to come, 0 off")
  for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight")
  expect(await slider.getAttribute("aria-valuetext")).toContain("Minute 5: 1 foil on, the longest for 1 min")
  expect(problems).toEqual([])
  await close()
})
