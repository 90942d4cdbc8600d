import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { examplePlan } from "../../web/core/file/examplePlan"
import { axeFaults } from "../support/axe"
import { closeBrowser, openBrowser, sizes, visit } from "../support/browser"
import { askedToday, openPlanText, takeClock } from "../support/chair"
import { goTo, options } from "../support/screen"
import { en } from "../support/words"

beforeAll(openBrowser)
afterAll(closeBrowser)

describe.each(sizes)("the sheets on a %s", (_, size) => {
  it("are chosen, looked at and saved one by one, and the choice stays while other screens are shown", async () => {
    const { page, problems, close } = await visit(size)
    await options(page).first().waitFor()
    await goTo(page, "Sheets")
    const sheet = (name: string) => page.getByRole("radio", { name, exact: true })
    const settings = page.locator(".sheet-settings")
    const says = (words: string) => settings.locator("summary").getByText(words, { exact: true }).waitFor()
    await says("A4, English (UK), As you face the client")
    await settings.locator("summary").click()
    await page.getByRole("group", { name: "Front view" }).waitFor()
    await sheet(en.sheets.names["take-home"]).check()
    await says("A4, English (UK)")
    await page.getByText(en.sheets.asides["take-home"]).waitFor()
    expect(await page.getByRole("group", { name: "Front view" }).count()).toBe(0)
    await page.getByText(en.sheets.cards.takeHome.skin).first().waitFor()
    expect(await axeFaults(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(size.viewport.width)
    const saved = page.waitForEvent("download")
    await page.getByRole("button", { name: "Save PDF" }).click()
    // The example is a visit of today.
    const today = new Date().toLocaleDateString("sv-SE", { timeZone: "Europe/London" })
    expect((await saved).suggestedFilename()).toBe(`soft-face-frame-melted-root-${today}.take-home.pdf`)
    await goTo(page, "Timing")
    const note = page.getByRole("textbox", { name: "Next time" })
    await note.fill("Softer root on the left.")
    await note.blur()
    await goTo(page, "Sheets")
    expect(await sheet(en.sheets.names["take-home"]).isChecked()).toBe(true)
    await sheet("Record card").check()
    const printed = (words: string) => page.locator(".sheet svg").getByText(words)
    await printed("Softer root on the left.").waitFor()
    expect(await axeFaults(page)).toEqual([])
    await note.fill("Softer root on both sides.")
    await note.blur()
    await printed("Softer root on both sides.").waitFor()
    await page.getByRole("button", { name: /^Undo: Save the note for next time/ }).click()
    await printed("Softer root on the left.").waitFor()
    expect(await note.inputValue()).toBe("Softer root on the left.")
    await sheet("Technique handout").check()
    await page.locator(".sheet, .small-page").first().waitFor()
    await says("A4, English (UK), As you face the client")
    expect(await axeFaults(page)).toEqual([])
    const handedOut = page.waitForEvent("download")
    await page.getByRole("button", { name: "Save PDF" }).click()
    expect((await handedOut).suggestedFilename()).toMatch(/\.technique\.pdf$/)
    await sheet("Placement map").check()
    await settings.locator("summary").click()
    await page.getByRole("group", { name: "Front view" }).waitFor()
    expect(problems).toEqual([])
    await close()
  })
})

it("prints the pages of the sheet alone, at life size, by its own button", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  await goTo(page, "Sheets")
  await page.locator(".sheet svg").waitFor()
  const pages = await page.locator(".small-page").count()
  await page.evaluate(() => {
    // Stands in for the browser's dialog, which no test can close; what goes to paper is asked for below.
    window.print = () => {
      document.body.dataset.asked = "print"
    }
  })
  await page.getByRole("button", { name: en.sheets.screen.print }).click()
  // The pages are drawn beside the screen first.
  await expect.poll(() => page.locator("body").getAttribute("data-asked")).toBe("print")
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")))
  await page.emulateMedia({ media: "print" })
  expect(await page.locator(".app").isVisible()).toBe(false)
  expect(await page.locator(".printed-page").count()).toBe(pages)
  const first = await page.locator(".printed-page svg").first().boundingBox()
  // 210 mm of paper at 96 px to the inch.
  expect(first?.width).toBeCloseTo((210 * 96) / 25.4, 0)
  // The browser's own way to paper: as many pages, and none of the screen.
  const pdf = await page.pdf({ preferCSSPageSize: true })
  expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length).toBe(pages)
  await page.evaluate(() => window.dispatchEvent(new Event("afterprint")))
  await page.emulateMedia({ media: "screen" })
  expect(await page.locator(".printed").count()).toBe(0)
  expect(await page.locator(".app").isVisible()).toBe(true)
  expect(problems).toEqual([])
  await close()
})

it("prints no clearance of the day before: what a sheet says of the plan is of the hour it is printed", async () => {
  const { page, problems, close } = await visit()
  await options(page).first().waitFor()
  const { toning: _, ...plan } = examplePlan()
  const consultation = askedToday()
  await openPlanText(page, { ...plan, date: consultation.scalp?.on ?? "", consultation })
  await takeClock(page)
  await goTo(page, "Sheets")
  const alert = en.sheets.map.alerts.notAsked
  await page.locator(".sheet svg").waitFor()
  expect(await page.locator(".sheet svg").getByText(alert).count()).toBe(0)
  // The clock alone goes on: no minute ticks before the page is printed.
  await page.clock.setSystemTime(Date.now() + 26 * 3_600_000)
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")))
  expect(await page.locator(".printed").getByText(alert).count()).toBeGreaterThan(0)
  expect(problems).toEqual([])
  await close()
})
