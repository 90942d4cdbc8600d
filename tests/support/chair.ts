import { mkdtempSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { Locator, Page } from "playwright-core"
import { expect } from "vitest"
import type { Plan } from "../../web/core/document/schema"
import { savePlan } from "../../web/core/file/planFile"
import { dayIn } from "../../web/core/text/zonedTime"
import { askedAll } from "./answers"
import { goTo, openPlanFile, options } from "./screen"

/** The chair as a person comes to it. */

/** Puts a plan on the screen through the plans dialog. */
export async function openPlanText(page: Page, plan: Plan) {
  const file = join(mkdtempSync(join(tmpdir(), "partline-plan-")), "plan.json")
  writeFileSync(file, savePlan(plan))
  await openPlanFile(page, file)
}

/** Everything asked today, by the clock of a visitor, and nothing found. */
export const askedToday = () => askedAll(dayIn("Europe/London", Date.now()))

/** The clock goes by hand. Not before the example stands, which is dated by it: while it is put in, it shows 1970. */
export async function takeClock(page: Page) {
  await options(page).first().waitFor()
  await page.clock.install()
}

/** From any screen to minute 0 of the service. */
export async function sitDown(page: Page) {
  await goTo(page, "Timing")
  await page.getByRole("button", { name: "Start at the chair" }).click()
  await startClock(page)
}

/**
 * Minute 0: at once where all was asked, else signed as asked aloud. Started by a key, which has no spot: a tap on what
 * stands there next would be held back for a second.
 */
export async function startClock(page: Page) {
  const start = page.getByRole("button", { name: "Start the clock" })
  const asked = page.getByRole("button", { name: "Asked aloud: no to all of these" })
  await start.waitFor()
  if (await asked.isVisible()) {
    await page.getByLabel("Your name").fill("Ana")
    await page.getByLabel("Your name").press("Tab")
    await asked.click()
  }
  await start.and(page.locator(":enabled")).press("Enter")
}

/** Taps a button away, again where the tap was held back as the second on its spot within a second. */
export async function tapAway(button: Locator, hand: "click" | "tap" = "click") {
  await button.waitFor()
  const isLeft = async () => {
    if ((await button.count()) > 0) await button[hand]()
    return (await button.count()) > 0
  }
  await expect.poll(isLeft, { interval: 250, timeout: 10_000 }).toBe(false)
}

export const putOn = (page: Page, foil: number, hand?: "click" | "tap") =>
  tapAway(page.getByRole("button", { name: `Foil ${foil} is on` }), hand)
