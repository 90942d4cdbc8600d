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
async function bowl(page: Page) {
  const first = page.locator(".bowls .bowl").first()
  const byVolume = await first.getByText(/^Developer by volume: /).textContent()
  const grams = await first.locator(".large-figures dd").allTextContents()
  return [...grams, byVolume?.replace(/\D+/, "") ?? ""].map((text) => Number.parseFloat(text))
}

/** Opens the fields of a mix, by its place. */
const openMix = (page: Page, nth: number) => page.locator(".mix > summary").nth(nth).tap()

it("goes from the consultation to the mix, its bowls, the scale and what is learnt, by touch", async () => {
  const { page, problems, close } = await visit({ ...portrait, hasTouch: true })
  await startNewPlan(page)

  await goTo(page, "Client")
  await chip(page, "Level now", "7")
  await chip(page, "Hair history", "Never treated")
  await chip(page, "Elasticity, stretched wet", "Springs back")
  await chip(page, "Target level, before toner", "10")
  await chip(page, "Finish tone", "Cool")
  await chip(page, "Scalp", "Calm")
  await type(page, "Age, not asked", "34")
  for (const alone of [
    "Ever had wheezing, coughing or hives near lightener?",
    "Asthma?",
    "Allergic to hair dye, PPD or lightener (also from a patch test at a doctor’s)?",
    "Any other allergy: fragrance, latex or rubber, adhesive plasters, nickel?",
    "A rash on the face today?",
    "Pregnant or breastfeeding?",
    "Does the person mixing get a cough, wheeze or rash from lightener?",
  ])
    await chip(page, alone, "No")
  await page.getByRole("button", { name: /^I asked all of these: “No” to the remaining/ }).tap()

  await goTo(page, "Placement")
  await unfold(page, /^Add by typing/)
  for (const behindMm of ["30", "36", "42", "48"]) {
    await type(page, "Behind the hairline where it starts", behindMm)
    await page.getByRole("button", { name: "Add slice", exact: true }).tap()
  }
  await options(page).nth(3).waitFor()

  // The worked choice of common practice: level 7, 3 levels, foils: 20 vol at 1 : 2.
  await goTo(page, "Formula")
  await openMix(page, 0)
  await page.getByText("Suggested: 20 vol.").waitFor()
  await page.getByText("3 levels to lift; the product sheet states 3–4 for 20 vol.").waitFor()
  // 6 % weighs 1.0204 g/mL.
  const [lightenerG, developerG, developerMl] = await bowl(page)
  expect(lightenerG).toBeGreaterThanOrEqual(10)
  expect(developerG).toBe(2 * lightenerG)
  expect(developerMl).toBe(Math.round(developerG / 1.0204))
  const firstBowl = page.locator(".bowls .bowl").first()
  await firstBowl.getByText(/^mix at minute \d+$/).waitFor()
  await firstBowl.getByText(/^Foils 1, 2/).waitFor()
  await expectPlainNumbers(page)

  // Upside down, and too strong: each says so and its cure; nothing is lost.
  await type(page, "Developer to 1 part of lightener", "0.5")
  await page.getByText(/more lightener than developer\. Enter lightener first/).waitFor()
  await chip(page, "Lightener to developer, by weight", "1 : 2")
  await chip(page, "Developer", "40 vol, 12 %")
  await page.getByText(/^Mix A is 40 vol, above the usual maximum of 30/).waitFor()
  await page.getByText("Do not mix. Resolve the stop above first.").waitFor()
  await page.getByRole("button", { name: "Use 20 vol" }).tap()
  await page.getByRole("heading", { name: /^Cleared on / }).waitFor()

  // The salon's own scale and bottles.
  await unfold(page, /^Your salon: phone, stock, scale and prices/)
  await chip(page, "Scale resolution", "0.1 g")
  await chip(page, "Developers in stock", "10 vol, 3 %")
  await chip(page, "Developers in stock", "40 vol, 12 %")
  await page.getByText(/^Developer by weight: [\d.]+ g of 40 vol \(12 %\) \+ [\d.]+ g of 10 vol/).waitFor()
  const [fineG] = await bowl(page)
  expect(fineG).toBeLessThanOrEqual(lightenerG)

  // The toner: a bowl of its own, held until its alert test has been read.
  await chip(page, "Toner", "House toner")
  await page.getByText(/^No patch test with House toner \(invented\) recorded/).waitFor()
  const tonerBowl =
    /([\d.]+) g House toner \(invented\) \+ ([\d.]+) g \((\d+) mL\) of 10 vol \(3 %\), for .*–([\d.]+) g/
  const toner = (await page.getByText(tonerBowl).textContent())?.match(tonerBowl) ?? []
  const [tonerG, withG, withMl, mostG] = toner.slice(1).map(Number)
  expect(withG).toBeCloseTo(2 * tonerG, 6)
  // 3 % weighs 1.0095 g/mL.
  expect(withMl).toBe(Math.round(withG / 1.0095))
  expect(tonerG + withG).toBeGreaterThan(mostG)
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
  await page.getByRole("button", { name: /^Undo: Go by what the scale has taught/ }).waitFor()
  await goTo(page, "Formula")
  await page.getByText(/^This plan uses what was learnt from all weighings \(12 weighed\)/).waitFor()
  expect(problems).toEqual([])
  await close()
})

it("stops more than 20 vol at the hairline, leaves it to a reason in writing alone, and prints it", async () => {
  const { page, problems, close } = await visit({ ...tablet, hasTouch: true })
  await options(page).first().waitFor()
  await goTo(page, "Formula")
  await openMix(page, 1)
  await chip(page, "Developer", "30 vol, 9 %")
  const stop = page.locator(".conflict", {
    hasText: "Mix B is 30 vol at the hairline; 20 vol is the most used",
  })
  await stop.getByText(/^Whose decision: the colourist\./).waitFor()
  await stop.getByText("Override in writing").tap()
  await stop.getByRole("button", { name: "Override this stop" }).tap()
  await stop.getByText("Enter a reason and your name first.").waitFor()
  await page.getByRole("heading", { name: "Do not mix: 1 stop." }).waitFor()
  await goTo(page, "Sheets")
  const sheet = page.locator(".preview .sheet")
  const printed = async () => (await sheet.textContent())?.replace(/\s+/g, " ")
  await expect
    .poll(printed, { timeout: 20_000 })
    .toMatch(/NOT CLEARED: DO NOT MIX\. 1 stop is open\. Mix B is 30 vol at the hairline/)
  await page.getByRole("button", { name: /^Undo: Change the developer/ }).tap()
  await expect.poll(printed, { timeout: 20_000 }).not.toMatch(/NOT CLEARED/)
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
