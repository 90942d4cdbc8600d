import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, portrait, tablet, visit } from "../support/browser"
import { goTo, options, startNewPlan } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const chip = (page: Page, group: string | RegExp, word: string, nth = 0) =>
  page.getByRole("group", { name: group, exact: true }).nth(nth).getByLabel(word, { exact: true }).tap()
const unfold = (page: Page, name: RegExp) => page.locator("summary").filter({ hasText: name }).tap()
async function type(page: Page, name: string, value: string) {
  await page.getByLabel(name, { exact: true }).tap()
  await page.getByLabel(name, { exact: true }).fill(value)
  await page.keyboard.press("Enter")
}

/** What must never be read on a screen: no number, minus nothing, a dozen digits. */
async function expectPlainNumbers(page: Page) {
  const text = await page.locator("main").textContent()
  expect(text).not.toMatch(/NaN|undefined|Infinity|[-−]0(?![.\d])|\d\.\d{5,}|\[object/)
}

/** Lightener g, developer g and mL of the first bowl. */
const bowl = async (page: Page) =>
  (await page.locator(".mix-figures .large-figures").first().locator("dd").allTextContents()).map((text) =>
    Number.parseFloat(text),
  )

it("goes from the consultation to the mix, its bowls, the scale and what is learnt, by touch", async () => {
  const { page, problems, close } = await visit({ ...portrait, hasTouch: true })
  await startNewPlan(page)

  await goTo(page, "Client")
  await chip(page, "Level now", "7")
  await chip(page, "It has been", "Never treated")
  await chip(page, "Lift to, before toning", "10")
  await chip(page, "Finish tone", "Cool")
  await chip(page, "Scalp", "Calm")
  await page.getByRole("button", { name: /^All asked: no to the other/ }).tap()

  await goTo(page, "Placement")
  await unfold(page, /^Add by typing/)
  for (const behindMm of ["30", "36", "42", "48"]) {
    await type(page, "Behind the hairline where it starts", behindMm)
    await page.getByRole("button", { name: "Add slice" }).tap()
  }
  await options(page).nth(3).waitFor()

  // The worked choice of common practice: level 7, 3 levels, foils: 20 vol at 1 : 2.
  await goTo(page, "Formula")
  await page.getByText("Proposed: 20 vol. 3 levels to lift; the sheet states 3 to 4 for 20 vol.").waitFor()
  // 6 % weighs 1.0204 g/mL.
  const [lightenerG, developerG, developerMl] = await bowl(page)
  expect(lightenerG).toBeGreaterThanOrEqual(10)
  expect(developerG).toBe(2 * lightenerG)
  expect(developerMl).toBe(Math.round(developerG / 1.0204))
  await page.getByText(/mix at minute \d+, for foils 1, 2/).waitFor()
  await expectPlainNumbers(page)

  // Upside down, and too strong: each says so and its cure; nothing is lost.
  await type(page, "Developer to 1 part of lightener", "0.5")
  await page.getByText(/as if turned upside down; write lightener first/).waitFor()
  await chip(page, "Lightener to developer, by weight", "1 : 2")
  await chip(page, "Developer", "40 vol, 12 %")
  await page.getByText(/^Mix A is 40 vol, above the usual ceiling of 30/).waitFor()
  await page.getByText("Held: do not mix. A stop above has to be answered first.").waitFor()
  await page.getByRole("button", { name: "Use 20 vol" }).tap()
  await page.getByRole("heading", { name: "No stop is open" }).waitFor()

  // The salon's own scale and bottles.
  await unfold(page, /^Your shelf, scale and prices/)
  await chip(page, "Your scale shows steps of", "0.1 g")
  await chip(page, "Developers on your shelf", "10 vol, 3 %")
  await chip(page, "Developers on your shelf", "40 vol, 12 %")
  await page.getByText(/^Developer by weight: [\d.]+ g of 40 vol \(12 %\) \+ [\d.]+ g of 10 vol/).waitFor()
  const [fineG] = await bowl(page)
  expect(fineG).toBeLessThanOrEqual(lightenerG)

  // The toner: a bowl of its own, held until its alert test has been read.
  await chip(page, "Toner", "House toner")
  await page.getByText(/^No alert test with House toner \(invented\) is written down/).waitFor()
  await page.getByText(/10 g House toner \(invented\) \+ 20 g \(20 mL\) of 10 vol/).waitFor()
  await expectPlainNumbers(page)
  await page.getByRole("button", { name: /^Undo: Change the toner/ }).tap()

  // One bowl on the scale, then eleven from a list.
  await type(page, "Before", "160")
  await type(page, "After", "148.5")
  await page.getByRole("button", { name: "Save: 11.5 g used" }).tap()
  await page.getByText(/more weighings? like these (is|are) needed for within 15%/).waitFor()
  await page
    .getByLabel("Add a list, CSV")
    .setInputFiles({ name: "bowls.csv", mimeType: "text/csv", buffer: Buffer.from(agreeingBowls()) })
  await page.getByText(/It can be trusted\.$/).waitFor()
  await page.getByText(/^This plan uses what was learnt from all weighings \(12 weighed\)/).waitFor()
  await expectPlainNumbers(page)

  // A list that is no list of weighings changes nothing.
  await page.getByLabel("Add a list, CSV").setInputFiles({
    name: "other.csv",
    mimeType: "text/csv",
    buffer: Buffer.from("hairG;strandAreaCm2;productG\n1,2;400;3,9"),
  })
  await page.getByText(/^Line 1: the columns are separated by semicolons/).waitFor()
  await page.getByText("12 weighings").waitFor()

  // A plan that was kept before the scale had taught anything follows it when it comes back.
  await page.getByRole("button", { name: /^Undo: Add weighings from a list/ }).tap()
  await page.getByText("Until then this plan uses the starting figures").waitFor()
  await page.getByText("Saved", { exact: true }).waitFor()
  await page.reload()
  await options(page).nth(3).waitFor()
  await page.getByRole("button", { name: /^Undo: Go by what the scale has taught/ }).waitFor()
  await goTo(page, "Formula")
  await page.getByText(/^This plan uses what was learnt from all weighings \(12 weighed\)/).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("never lets more than 20 vol stand at the hairline, whatever is typed or written, and prints it", async () => {
  const { page, problems, close } = await visit({ ...tablet, hasTouch: true })
  await options(page).first().waitFor()
  await goTo(page, "Formula")
  await chip(page, "Developer", "30 vol, 9 %", 1)
  await page.getByText(/^Mix B is 30 vol at the hairline, where 20 vol is the most/).waitFor()
  await page.getByText("This stop cannot be passed.").waitFor()
  await goTo(page, "Sheets")
  await page
    .locator(".preview svg")
    .getByText(/NOT CLEARED: a stop holds the mix\. Mix B is 30/)
    .waitFor()
  await page.getByRole("button", { name: /^Undo: Change the developer/ }).tap()
  await page
    .locator(".preview svg")
    .getByText(/NOT CLEARED/)
    .waitFor({ state: "detached" })
  expect(problems).toEqual([])
  await close()
})

/** Eleven bowls that take a fifth more than the starting figures. */
function agreeingBowls() {
  const rows = Array.from({ length: 11 }, (_, i) => {
    const [hair, strand, foils] = [4 + ((3 * i) % 7), 1500 + 400 * ((2 * i) % 5), 4 + (i % 5)]
    return [hair, strand, (1.2 * (0.3 * foils + 2 * hair + 0.003 * strand)).toFixed(1), foils].join(",")
  })
  return ["hairG,strandAreaCm2,productG,foils", ...rows].join("\n")
}
