import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, phone, tablet, visit } from "../support/browser"
import { goTo, options, startNewPlan } from "../support/screen"
import { en } from "../support/words"

beforeAll(openBrowser)
afterAll(closeBrowser)

const { lesson: w, names } = en.sheets

describe.each([
  ["tablet", tablet],
  ["phone", phone],
] as const)("a handout on a %s", (_, size) => {
  it("says what its technique says, and what the educator makes of it", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await startNewPlan(page)
    await page.locator(".technique").filter({ hasText: "Fringe panel" }).click()
    await options(page).first().waitFor()
    await goTo(page, "Sheets")
    await page.getByRole("radio", { name: names.technique, exact: true }).check()
    const printed = (words: string) => page.locator(".sheet svg").getByText(words)
    await printed("Fringe panel").first().waitFor()
    await page.getByRole("button", { name: w.edit }).click()
    const text = (name: string) => page.getByRole("textbox", { name, exact: true })
    await text(w.name).fill("Fringe, day 3")
    await text(w.steps).fill("Watch first.\n\n  Then part with your partner.  ")
    await page.getByRole("button", { name: w.removeFault(1) }).click()
    expect(await axeFaults(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(size.viewport.width)
    await page.getByRole("button", { name: w.keep }).click()
    await page.getByRole("dialog").waitFor({ state: "detached" })
    await printed("Fringe, day 3").first().waitFor()
    await printed("Then part with your partner.").waitFor()
    expect(await axeFaults(page)).toEqual([])
    await page.getByRole("button", { name: w.asDrawn }).click()
    await printed("Fringe panel").first().waitFor()
    await page.getByRole("button", { name: /^Undo: Handout/ }).click()
    await printed("Fringe, day 3").first().waitFor()
    expect(problems).toEqual([])
    await close()
  })
})
