import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, portrait, visit } from "../support/browser"
import { options, startNewPlan } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

it("saves all plans to one file and brings back by it what another browser has not", async () => {
  const { page, close } = await visit(portrait)
  await options(page).first().waitFor()
  await startNewPlan(page)
  await page.getByRole("button", { name: /Plans…/ }).click()
  await page.getByText("No backup has been saved from this browser.").waitFor()
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a backup" }).click(),
  ])
  await page.getByText("The last backup is from today.").waitFor()
  const file = await download.path()

  const another = await visit(portrait)
  await options(another.page).first().waitFor()
  await another.page.getByRole("button", { name: /Plans…/ }).click()
  await another.page.getByLabel("Backup file").setInputFiles(file)
  await another.page.getByText(/Nothing here is replaced/).waitFor()
  await another.page.getByRole("button", { name: "Take them in" }).click()
  await another.page.getByText("The backup is taken in.").waitFor()
  // Its own example, and of the backup the example there and the plan begun.
  await expect.poll(() => another.page.getByRole("button", { name: /^Rename/ }).count()).toBe(3)
  expect(another.problems).toEqual([])
  await another.close()
  await close()
})
