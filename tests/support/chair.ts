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
  await page.getByRole("button", { name: "Go to the chair" }).click()
  await page.getByRole("button", { name: "Start: first parting" }).click()
}
