import { readFileSync } from "node:fs"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, expect, it } from "vitest"
import { closeBrowser, openBrowser, phone, visit } from "../support/browser"
import { startClock, takeClock } from "../support/chair"
import { fingerOn } from "../support/finger"
import { readPdfText } from "../support/pdfText"
import { onLargeView, options } from "../support/screen"

beforeAll(openBrowser)
afterAll(closeBrowser)

const minute = 60_000

/** One touch of a finger on something that can be seen: all that this person does, but for typing. */
const touch = (page: Page, name: string | RegExp, role: "button" | "radio" = "button") =>
  page.getByRole(role, { name }).first().tap()

/** A finger drawn through places of the front view, mm. */
async function strokeOnFront(page: Page, places: readonly (readonly [number, number])[]) {
  const finger = await fingerOn(page)
  const [first, ...more] = await Promise.all(places.map(([x, y]) => onLargeView(page, "front", x, y)))
  await finger.down(first)
  for (const place of more) await finger.move(place)
  await finger.up()
}

/** All that can hurt, asked and looked at by finger: age, scalp, the questions asked alone, the others at once, the hair. */
async function askAll(page: Page) {
  const chip = (group: string | RegExp, word: string) =>
    page.getByRole("group", { name: group }).getByLabel(word, { exact: true }).tap()
  await page.getByLabel("Age, not asked", { exact: true }).fill("34")
  await page.keyboard.press("Enter")
  await chip("Scalp", "Calm")
  const breathing = [/^Ever had wheezing/, /^Asthma/, /^Does the person mixing/]
  for (const alone of [...breathing, /^Allergic to/, /^Any other allergy/, /^A rash/, /^Pregnant/])
    await chip(alone, "No")
  await touch(page, /^I asked all of these/)
  await chip("Hair history", "Never treated")
  await chip("Porosity", "Normal")
  await chip("Elasticity, stretched wet", "Springs back")
}

it("carries the whole job on a phone by finger, from an empty plan through the chair to the record card", async () => {
  const { page, problems, close } = await visit(phone)
  await takeClock(page)
  await touch(page, /Plans…/)
  await touch(page, "New plan")
  await page.getByRole("textbox", { name: "Initials" }).fill("F.N.")
  await askAll(page)
  await touch(page, "Placement")
  await page.getByText("No foils yet.").waitFor()
  await strokeOnFront(page, [
    [-10, 90],
    [-22, 90],
    [-35, 88],
    [-48, 80],
    [-58, 70],
  ])
  await expect.poll(() => options(page).count()).toBe(1)
  await touch(page, /^Mirror/)
  await expect.poll(() => options(page).count()).toBe(2)
  await touch(page, /^Repeat behind/)
  await expect.poll(() => options(page).count()).toBe(4)
  await touch(page, "Formula")
  await touch(page, "Timing")
  await page.clock.runFor(1000)
  await touch(page, "Start at the chair")
  await startClock(page)
  await page.clock.runFor(4 * minute)
  for (const number of [1, 2, 3, 4]) {
    await touch(page, `Foil ${number} is on`)
    await page.clock.runFor(2 * minute)
  }
  await page.clock.runFor(4 * minute)
  await touch(page, /^Foils 1, 2: check now/)
  await touch(page, "Checked")
  await touch(page, "Half a level lighter")
  for (const group of ["Stretch", "Scalp"])
    await page.getByRole("group", { name: group }).getByRole("button", { name: "Ok" }).tap()
  await touch(page, "Moist")
  await touch(page, "Save check")
  await page.clock.runFor(12 * minute)
  await touch(page, /^Foil 1/)
  await touch(page, "Off")
  // Three foils are not ready: the rinse asks once.
  await touch(page, "Rinse now")
  await touch(page, "Rinse all")
  await page.clock.runFor(2000)
  await touch(page, "End the service")
  await page.getByRole("heading", { name: "Planned and actual" }).waitFor()
  await touch(page, "Leave")
  await touch(page, "Sheets")
  await touch(page, "Record card", "radio")
  await page.locator(".preview svg").first().waitFor()
  const [download] = await Promise.all([page.waitForEvent("download"), touch(page, "Save PDF")])
  const text = await readPdfText(readFileSync(await download.path()))
  for (const words of ["F.N.", "Record card"]) expect(text).toContain(words)
  expect(problems).toEqual([])
  await close()
})
