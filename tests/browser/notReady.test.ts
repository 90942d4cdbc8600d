import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, portrait, visit } from "../support/browser"
import { sitDown, takeClock } from "../support/chair"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000

it("asks once before a rinse with foils not ready, and names them; a check put off leaves the foil on", async () => {
  const { page, problems, close } = await visit({ ...portrait, hasTouch: true })
  await takeClock(page)
  await sitDown(page)
  await page.clock.runFor(2000)
  await page.getByRole("button", { name: "Foil 1 is on" }).tap()
  await page.clock.runFor(8 * minute)
  await page.locator(".tile").first().tap()
  await page.clock.runFor(2000)
  await page.getByRole("button", { name: "Checked", exact: true }).tap()
  await page.clock.runFor(2000)
  await page.getByRole("button", { name: "Not now" }).tap()
  await page.clock.runFor(2000)
  const rinse = page.getByRole("button", { name: /^Rinse now/ })
  await rinse.tap()
  await page
    .getByRole("alert")
    .getByText(/foil 1\b/i)
    .waitFor()
  await page.clock.runFor(2000)
  await page.getByRole("button", { name: "Not yet" }).tap()
  expect(await page.locator(".tile").count()).toBe(1)
  await page.clock.runFor(2000)
  await rinse.tap()
  await page.clock.runFor(2000)
  await page.getByRole("button", { name: "Rinse all" }).tap()
  await page.locator(".tile").first().waitFor({ state: "detached" })
  await page.getByRole("button", { name: "End the service" }).waitFor()
  expect(problems).toEqual([])
  await close()
})
