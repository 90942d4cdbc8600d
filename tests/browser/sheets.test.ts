import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, phone, portrait, tablet, visit } from "../support/browser"
import { goTo, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

describe.each([
  ["tablet", tablet],
  ["portrait", portrait],
  ["phone", phone],
] as const)("the sheets on a %s", (_, size) => {
  it("are chosen, looked at and saved one by one, and the choice stays while other screens are shown", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await goTo(page, "Sheets")
    const sheet = (name: string) => page.getByRole("radio", { name, exact: true })
    await page.getByRole("group", { name: "Front view" }).waitFor()
    await sheet("To take home").check()
    await page.getByText(/No formula and no health answer is on it/).waitFor()
    expect(await page.getByRole("group", { name: "Front view" }).count()).toBe(0)
    await page.getByText("Your skin, today and the next three days").waitFor()
    expect(await axeFaults(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(size.viewport.width)
    const saved = page.waitForEvent("download")
    await page.getByRole("button", { name: "Save PDF" }).click()
    expect((await saved).suggestedFilename()).toBe("soft-face-frame-melted-root-2026-03-09.take-home.pdf")
    await goTo(page, "Timing")
    const note = page.getByRole("textbox", { name: "Next time" })
    await note.fill("Softer root on the left.")
    await note.blur()
    await goTo(page, "Sheets")
    expect(await sheet("To take home").isChecked()).toBe(true)
    await sheet("Record card").check()
    const printed = (words: string) => page.locator("svg").getByText(words)
    await printed("Softer root on the left.").waitFor()
    expect(await axeFaults(page)).toEqual([])
    await note.fill("Softer root on both sides.")
    await note.blur()
    await printed("Softer root on both sides.").waitFor()
    await page.getByRole("button", { name: /^Undo: Write a note for next time/ }).click()
    await printed("Softer root on the left.").waitFor()
    expect(await note.inputValue()).toBe("Softer root on the left.")
    await sheet("Technique handout").check()
    await page.getByText("Step by step").waitFor()
    await page.getByRole("group", { name: "Front view" }).waitFor()
    expect(await axeFaults(page)).toEqual([])
    const handedOut = page.waitForEvent("download")
    await page.getByRole("button", { name: "Save PDF" }).click()
    expect((await handedOut).suggestedFilename()).toMatch(/\.technique\.pdf$/)
    await sheet("Placement map").check()
    await page.getByRole("group", { name: "Front view" }).waitFor()
    expect(problems).toEqual([])
    await close()
  })
})
