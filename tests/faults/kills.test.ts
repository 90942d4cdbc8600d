import { afterAll, beforeAll, expect, test } from "vitest"
import { appAddress, closeBrowser, newVisitorOnline, openBrowser, openPage } from "../support/browser"
import { howMany } from "./howMany"

/** A window killed in the middle of work: what was called saved is there. */

beforeAll(openBrowser)
afterAll(closeBrowser)

test("no change that was called saved is lost", async () => {
  const context = await newVisitorOnline()
  let foils = -1
  for (let kill = 0; kill < howMany({ slice: 3, whole: 200 }); kill++) {
    const { page } = await openPage(context, appAddress())
    await page.getByText("Saved", { exact: true }).waitFor()
    const rows = page.locator("aside.list [role=option]")
    await rows.first().waitFor()
    if (foils >= 0) expect(await rows.count()).toBe(foils)
    const undo = page.getByRole("button", { name: /^Undo/ })
    const redrawn = kill % 2 === 0 ? "Delete" : "Control+z"
    if (redrawn === "Delete" && (await rows.count()) > 2) {
      await rows.last().click()
      await page.keyboard.press("Delete")
      await undo.and(page.locator(":enabled")).waitFor()
    }
    await page.getByText("Saved", { exact: true }).waitFor()
    foils = await rows.count()
    await page.close({ runBeforeUnload: false })
  }
  await context.close()
})
