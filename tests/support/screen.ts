import type { Page } from "playwright-core"

/** The screen by what a person sees on it: words, roles and places on the head. */

/** Open a plan from a file, as the plans dialog does. */
export async function openPlanFile(page: Page, file: string) {
  await page.getByRole("button", { name: /Plans…/ }).click()
  await page.getByLabel("Plan file").setInputFiles(file)
  await page.getByRole("dialog").waitFor({ state: "hidden" })
  await page.locator(".pane.large canvas").first().waitFor()
}
