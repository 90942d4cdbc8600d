import { mkdtempSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { Page } from "playwright-core"
import type { Plan } from "../../web/core/document/schema"
import { savePlan } from "../../web/core/file/planFile"
import { goTo, openPlanFile } from "./screen"

/** The chair as a person comes to it. */

/** Puts a plan on the screen through the plans dialog. */
export async function openPlanText(page: Page, plan: Plan) {
  const file = join(mkdtempSync(join(tmpdir(), "partline-plan-")), "plan.json")
  writeFileSync(file, savePlan(plan))
  await openPlanFile(page, file)
}

/** From any screen to minute 0 of the service. */
export async function sitDown(page: Page) {
  await goTo(page, "Timing")
  await page.getByRole("button", { name: "Start at the chair" }).click()
  await startClock(page)
}

/** Minute 0: at once where all was asked, else signed as asked aloud. */
export async function startClock(page: Page) {
  const start = page.getByRole("button", { name: "Start the clock" })
  const asked = page.getByRole("button", { name: "Asked aloud, no to all" })
  await start.or(asked).waitFor()
  if (await start.isVisible()) return start.click()
  await page.getByLabel("Your name").fill("Ana")
  await page.getByLabel("Your name").press("Tab")
  await asked.click()
}
